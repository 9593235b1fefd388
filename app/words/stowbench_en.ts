<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Arrivals</name>
    <message numerus="yes">
        <source>%n are fine: check them</source>
        <translation>
            <numerusform>%n is fine: check it</numerusform>
            <numerusform>%n are fine: check them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Plan %n orders</source>
        <translation>
            <numerusform>Plan %n order</numerusform>
            <numerusform>Plan %n orders</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message numerus="yes">
        <source>List %1 for %2: %n parcels</source>
        <translation>
            <numerusform>List %1 for %2: %n parcel</numerusform>
            <numerusform>List %1 for %2: %n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1  %n parcels, %2 spent, %3 postage paid</source>
        <translation>
            <numerusform>%1  %n parcel, %2 spent, %3 postage paid</numerusform>
            <numerusform>%1  %n parcels, %2 spent, %3 postage paid</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels</source>
        <translation>
            <numerusform>%n parcel</numerusform>
            <numerusform>%n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 sizes: %2, %n not served, at most %3 % from the best: %4</source>
        <translation>
            <numerusform>%1 sizes: %2, %n not served, at most %3 % from the best: %4</numerusform>
            <numerusform>%1 sizes: %2, %n not served, at most %3 % from the best: %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Judged by %n parcels of the last weeks, which played no part in the choice; with the cartons of today one costs %1.</source>
        <translation>
            <numerusform>Judged by %n parcel of the last weeks, which played no part in the choice; with the cartons of today one costs %1.</numerusform>
            <numerusform>Judged by %n parcels of the last weeks, which played no part in the choice; with the cartons of today one costs %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n packs of %1</source>
        <translation>
            <numerusform>%n pack of %1</numerusform>
            <numerusform>%n packs of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wait for it</source>
        <translation>
            <numerusform>%n waits for it</numerusform>
            <numerusform>%n wait for it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n papers deleted</source>
        <translation>
            <numerusform>%n paper deleted</numerusform>
            <numerusform>%n papers deleted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The data of %n buyers is old and was erased.</source>
        <translation>
            <numerusform>The data of %n buyer is old and was erased.</numerusform>
            <numerusform>The data of %n buyers is old and was erased.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tables, %1 rows. Buyers&apos; names and addresses are in them.</source>
        <translation>
            <numerusform>%n table, %1 rows. Buyers&apos; names and addresses are in it.</numerusform>
            <numerusform>%n tables, %1 rows. Buyers&apos; names and addresses are in them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A shop book of %n tables, %1 rows, checked</source>
        <translation>
            <numerusform>A shop book of %n table, %1 rows, checked</numerusform>
            <numerusform>A shop book of %n tables, %1 rows, checked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The data of %n buyers is erased from the book, its history and the copies beside it. Copies you made elsewhere are erased when they are restored. Tax law may ask you to keep invoices, elsewhere.</source>
        <translation>
            <numerusform>The data of %n buyer is erased from the book, its history and the copies beside it. Copies you made elsewhere are erased when they are restored. Tax law may ask you to keep invoices, elsewhere.</numerusform>
            <numerusform>The data of %n buyers is erased from the book, its history and the copies beside it. Copies you made elsewhere are erased when they are restored. Tax law may ask you to keep invoices, elsewhere.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n remembered packing questions were worked out again. Outers refused in them: %1; none of them holds its set.</source>
        <translation>
            <numerusform>%n remembered packing question was worked out again. Outers refused in it: %1; none of them holds its set.</numerusform>
            <numerusform>%n remembered packing questions were worked out again. Outers refused in them: %1; none of them holds its set.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of these refusals %n could not be proven again with the work allowed, nor disproven.</source>
        <translation>
            <numerusform>Of these refusals %n could not be proven again with the work allowed, nor disproven.</numerusform>
            <numerusform>Of these refusals %n could not be proven again with the work allowed, nor disproven.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>View</name>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n changed</numerusform>
            <numerusform>%n changed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n known already</source>
        <translation>
            <numerusform>%n known already</numerusform>
            <numerusform>%n known already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::ArrivalsController</name>
    <message numerus="yes">
        <source>%n orders need a look</source>
        <translation>
            <numerusform>%n order needs a look</numerusform>
            <numerusform>%n orders need a look</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders arrived, nothing in the way</source>
        <translation>
            <numerusform>%n order arrived, nothing in the way</numerusform>
            <numerusform>%n orders arrived, nothing in the way</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fine as they are</source>
        <translation>
            <numerusform>%n fine as it is</numerusform>
            <numerusform>%n fine as they are</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n ready to plan</source>
        <translation>
            <numerusform>%n ready to plan</numerusform>
            <numerusform>%n ready to plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation>
            <numerusform>%n set aside</numerusform>
            <numerusform>%n set aside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n changed</numerusform>
            <numerusform>%n changed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n known already</source>
        <translation>
            <numerusform>%n known already</numerusform>
            <numerusform>%n known already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n called off</source>
        <translation>
            <numerusform>%n called off</numerusform>
            <numerusform>%n called off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows left out</source>
        <translation>
            <numerusform>%n row left out</numerusform>
            <numerusform>%n rows left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders are ready</source>
        <translation>
            <numerusform>%n order is ready</numerusform>
            <numerusform>%n orders are ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders set aside: %1</source>
        <translation>
            <numerusform>%n order set aside: %1</numerusform>
            <numerusform>%n orders set aside: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders are back</source>
        <translation>
            <numerusform>%n order is back</numerusform>
            <numerusform>%n orders are back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders called off</source>
        <translation>
            <numerusform>%n order called off</numerusform>
            <numerusform>%n orders called off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n still missing: %1</source>
        <translation>
            <numerusform>%n still missing: %1</numerusform>
            <numerusform>%n still missing: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n planned</source>
        <translation>
            <numerusform>%n planned</numerusform>
            <numerusform>%n planned</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::BeforeSaleController</name>
    <message numerus="yes">
        <source>%n days at most</source>
        <translation>
            <numerusform>%n day at most</numerusform>
            <numerusform>%n days at most</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows: </source>
        <translation>
            <numerusform>%n row: </numerusform>
            <numerusform>%n rows: </numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::BenchController</name>
    <message numerus="yes">
        <source>%n more wait</source>
        <translation>
            <numerusform>%n more waits</numerusform>
            <numerusform>%n more wait</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::DispatchController</name>
    <message numerus="yes">
        <source>%n messages: </source>
        <translation>
            <numerusform>%n message: </numerusform>
            <numerusform>%n messages: </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tracking numbers taken</source>
        <translation>
            <numerusform>%n tracking number taken</numerusform>
            <numerusform>%n tracking numbers taken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::FindController</name>
    <message numerus="yes">
        <source>%n found</source>
        <translation>
            <numerusform>%n found</numerusform>
            <numerusform>%n found</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Erased, from the history too; the copies beside the book follow. %n papers may still show it: %1</source>
        <translation>
            <numerusform>Erased, from the history too; the copies beside the book follow. %n paper may still show it: %1</numerusform>
            <numerusform>Erased, from the history too; the copies beside the book follow. %n papers may still show it: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::FirstSteps</name>
    <message numerus="yes">
        <source>%n steps to the first parcel</source>
        <translation>
            <numerusform>%n step to the first parcel</numerusform>
            <numerusform>%n steps to the first parcel</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::GoodsController</name>
    <message numerus="yes">
        <source>%n goods</source>
        <translation>
            <numerusform>%n good</numerusform>
            <numerusform>%n goods</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to make more of</source>
        <translation>
            <numerusform>%n to make more of</numerusform>
            <numerusform>%n to make more of</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::HandOverController</name>
    <message numerus="yes">
        <source>%n not labelled yet and would stay</source>
        <translation>
            <numerusform>%n not labelled yet and would stay</numerusform>
            <numerusform>%n not labelled yet and would stay</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels</source>
        <translation>
            <numerusform>%n parcel</numerusform>
            <numerusform>%n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels ready to go</source>
        <translation>
            <numerusform>%n parcel ready to go</numerusform>
            <numerusform>%n parcels ready to go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n handed over today</source>
        <translation>
            <numerusform>%n handed over today</numerusform>
            <numerusform>%n handed over today</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>List %1 for %2: %n parcels</source>
        <translation>
            <numerusform>List %1 for %2: %n parcel</numerusform>
            <numerusform>List %1 for %2: %n parcels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::PaperBoxesController</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::PickController</name>
    <message numerus="yes">
        <source>%n parcels to pick</source>
        <translation>
            <numerusform>%n parcel to pick</numerusform>
            <numerusform>%n parcels to pick</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n trays a round</source>
        <translation>
            <numerusform>%n tray a round</numerusform>
            <numerusform>%n trays a round</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n trays</source>
        <translation>
            <numerusform>%n tray</numerusform>
            <numerusform>%n trays</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::PlanController</name>
    <message numerus="yes">
        <source>%n parcels planned</source>
        <translation>
            <numerusform>%n parcel planned</numerusform>
            <numerusform>%n parcels planned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders to plan</source>
        <translation>
            <numerusform>%n order to plan</numerusform>
            <numerusform>%n orders to plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels</source>
        <translation>
            <numerusform>%n parcel</numerusform>
            <numerusform>%n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopped: %n orders were not reached</source>
        <translation>
            <numerusform>Stopped: %n order was not reached</numerusform>
            <numerusform>Stopped: %n orders were not reached</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::RatesController</name>
    <message numerus="yes">
        <source>%n services</source>
        <translation>
            <numerusform>%n service</numerusform>
            <numerusform>%n services</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n zones</source>
        <translation>
            <numerusform>%n zone</numerusform>
            <numerusform>%n zones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cells pasted</source>
        <translation>
            <numerusform>%n cell pasted</numerusform>
            <numerusform>%n cells pasted</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::RecordsController</name>
    <message numerus="yes">
        <source>%n parcels were weighed</source>
        <translation>
            <numerusform>%n parcel was weighed</numerusform>
            <numerusform>%n parcels were weighed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels</source>
        <translation>
            <numerusform>%n parcel</numerusform>
            <numerusform>%n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adding up %n parcels</source>
        <translation>
            <numerusform>adding up %n parcel</numerusform>
            <numerusform>adding up %n parcels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::RulesTable</name>
    <message numerus="yes">
        <source>%n rules are kept</source>
        <translation>
            <numerusform>%n rule is kept</numerusform>
            <numerusform>%n rules are kept</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::SizesController</name>
    <message numerus="yes">
        <source>Weighing up %n parcels of the last two years</source>
        <translation>
            <numerusform>Weighing up %n parcel of the last two years</numerusform>
            <numerusform>Weighing up %n parcels of the last two years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sizes</source>
        <translation>
            <numerusform>%n size</numerusform>
            <numerusform>%n sizes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels go into none of them</source>
        <translation>
            <numerusform>%n parcel goes into none of them</numerusform>
            <numerusform>%n parcels go into none of them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels</source>
        <translation>
            <numerusform>%n parcel</numerusform>
            <numerusform>%n parcels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n different blocks</source>
        <translation>
            <numerusform>%n block</numerusform>
            <numerusform>%n different blocks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>with the cartons of today one costs %1 on the %n parcels kept back to judge by</source>
        <translation>
            <numerusform>with the cartons of today one costs %1 on the %n parcel kept back to judge by</numerusform>
            <numerusform>with the cartons of today one costs %1 on the %n parcels kept back to judge by</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels kept back to judge by</source>
        <translation>
            <numerusform>%n parcel kept back to judge by</numerusform>
            <numerusform>%n parcels kept back to judge by</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::SuppliesController</name>
    <message numerus="yes">
        <source>lasts %n days</source>
        <translation>
            <numerusform>lasts %n day</numerusform>
            <numerusform>lasts %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n supplies to reorder</source>
        <translation>
            <numerusform>%n supply to reorder</numerusform>
            <numerusform>%n supplies to reorder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>comes in %n days</source>
        <translation>
            <numerusform>comes in %n day</numerusform>
            <numerusform>comes in %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n supplies to count</source>
        <translation>
            <numerusform>%n supply to count</numerusform>
            <numerusform>%n supplies to count</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; off by %1 a week in %n weeks it had not seen</source>
        <translation>
            <numerusform>; off by %1 a week in %n week it had not seen</numerusform>
            <numerusform>; off by %1 a week in %n weeks it had not seen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n supplies, all there</source>
        <translation>
            <numerusform>%n supply, all there</numerusform>
            <numerusform>%n supplies, all there</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>stow::view::WrappingsTable</name>
    <message numerus="yes">
        <source>%n wrappings are kept</source>
        <translation>
            <numerusform>%n wrapping is kept</numerusform>
            <numerusform>%n wrappings are kept</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>words</name>
    <message numerus="yes">
        <source>%n of %1 missing on the shelf</source>
        <translation>
            <numerusform>%n of %1 missing on the shelf</numerusform>
            <numerusform>%n of %1 missing on the shelf</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more orders go</source>
        <translation>
            <numerusform>%n more order goes</numerusform>
            <numerusform>%n more orders go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more in time</source>
        <translation>
            <numerusform>%n more in time</numerusform>
            <numerusform>%n more in time</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 more of %2 would let %n orders go</source>
        <translation>
            <numerusform>%1 more of %2 would let %n order go</numerusform>
            <numerusform>%1 more of %2 would let %n orders go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stopped: at most %n more orders could go</source>
        <translation>
            <numerusform>stopped: at most %n more order could go</numerusform>
            <numerusform>stopped: at most %n more orders could go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>stopped: at most %n more could be in time</source>
        <translation>
            <numerusform>stopped: at most %n more could be in time</numerusform>
            <numerusform>stopped: at most %n more could be in time</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders checked</source>
        <translation>
            <numerusform>%n order checked</numerusform>
            <numerusform>%n orders checked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders set aside</source>
        <translation>
            <numerusform>%n order set aside</numerusform>
            <numerusform>%n orders set aside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders taken back</source>
        <translation>
            <numerusform>%n order taken back</numerusform>
            <numerusform>%n orders taken back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n orders called off</source>
        <translation>
            <numerusform>%n order called off</numerusform>
            <numerusform>%n orders called off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels locked</source>
        <translation>
            <numerusform>%n parcel locked</numerusform>
            <numerusform>%n parcels locked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n parcels unlocked</source>
        <translation>
            <numerusform>%n parcel unlocked</numerusform>
            <numerusform>%n parcels unlocked</numerusform>
        </translation>
    </message>
</context>
</TS>
