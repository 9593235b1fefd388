#include "core/book/schema.h"

#include "core/book/book.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

namespace stow::book {

namespace {

// Definitions (goods, supplies...) are read and written whole, so each is one document beside its code. What moves or
// is looked for (orders, parcels, the ledger) has columns.
constexpr auto first_tables = R"sql(
CREATE TABLE step (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    at INTEGER NOT NULL, -- seconds since 1970, UTC
    kind TEXT NOT NULL,
    words TEXT NOT NULL CHECK (json_valid(words)),
    undoes INTEGER REFERENCES step (id)
) STRICT;
CREATE INDEX step_undoes ON step (undoes) WHERE undoes IS NOT NULL;

-- A row as it was before the step; no text: it was not there.
CREATE TABLE image (
    id INTEGER PRIMARY KEY,
    step INTEGER NOT NULL REFERENCES step (id) DEFERRABLE INITIALLY DEFERRED,
    tab TEXT NOT NULL,
    key INTEGER NOT NULL,
    before TEXT CHECK (before IS NULL OR json_valid(before))
) STRICT;
CREATE INDEX image_step ON image (step);
CREATE INDEX image_row ON image (tab, key);

CREATE TABLE movement (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    step INTEGER NOT NULL REFERENCES step (id) DEFERRABLE INITIALLY DEFERRED,
    ledger TEXT NOT NULL CHECK (ledger IN ('supplies', 'goods')),
    code TEXT NOT NULL,
    kind TEXT NOT NULL,
    amount INTEGER NOT NULL, -- thousandths of the unit; of goods, of a piece
    parcel INTEGER,          -- may be gone by now
    reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX movement_code ON movement (ledger, code);
CREATE INDEX movement_step ON movement (step);

CREATE TRIGGER movement_stays BEFORE UPDATE ON movement BEGIN SELECT RAISE(ABORT, 'movements are only added'); END;
CREATE TRIGGER movement_kept BEFORE DELETE ON movement BEGIN SELECT RAISE(ABORT, 'movements are only added'); END;
CREATE TRIGGER step_stays BEFORE UPDATE ON step BEGIN SELECT RAISE(ABORT, 'steps are only added'); END;
CREATE TRIGGER step_kept BEFORE DELETE ON step BEGIN SELECT RAISE(ABORT, 'steps are only added'); END;

CREATE TABLE house ( -- parts: 'house', 'rules'
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    part TEXT NOT NULL UNIQUE,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE TABLE good (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    code TEXT NOT NULL UNIQUE,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE TABLE supply (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    code TEXT NOT NULL UNIQUE,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE TABLE wrapping (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    code TEXT NOT NULL UNIQUE,
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE TABLE rate_sheet (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    carrier TEXT NOT NULL,
    valid_from TEXT NOT NULL, -- '': always
    valid_until TEXT NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    UNIQUE (carrier, valid_from)
) STRICT;

CREATE TABLE orders (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    shop TEXT NOT NULL,
    number TEXT NOT NULL,
    date TEXT NOT NULL,
    promised TEXT,
    paid INTEGER NOT NULL,
    contact TEXT NOT NULL,
    name TEXT NOT NULL,
    company TEXT NOT NULL,
    street TEXT NOT NULL, -- one line each
    postcode TEXT NOT NULL,
    town TEXT NOT NULL,
    region TEXT NOT NULL,
    country TEXT NOT NULL,
    note TEXT NOT NULL,
    giver TEXT,          -- null: no gift
    gift_message TEXT,
    service_wanted TEXT NOT NULL,
    postage_paid INTEGER,
    postage_paid_currency TEXT,
    called_off INTEGER NOT NULL, -- says the shop
    state TEXT NOT NULL CHECK (state IN ('arrived', 'checked', 'set aside', 'called off')),
    aside_reason TEXT NOT NULL DEFAULT '',
    aside_until TEXT,
    version INTEGER NOT NULL DEFAULT 1,
    changed INTEGER NOT NULL DEFAULT 0,
    joined_to INTEGER REFERENCES orders (id),
    told TEXT CHECK (told IS NULL OR json_valid(told)), -- the order as the shop told it last; null: entered by hand
    UNIQUE (shop, number)
) STRICT;
CREATE INDEX orders_state ON orders (state);
CREATE INDEX orders_joined ON orders (joined_to);
CREATE TABLE order_line (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    order_id INTEGER NOT NULL REFERENCES orders (id),
    place INTEGER NOT NULL, -- from 0
    title TEXT NOT NULL,
    variant TEXT NOT NULL,
    shop_code TEXT NOT NULL,
    good TEXT NOT NULL, -- '': not matched
    count INTEGER NOT NULL,
    price INTEGER,
    price_currency TEXT,
    personal_text TEXT NOT NULL,
    UNIQUE (order_id, place)
) STRICT;
CREATE TABLE good_match (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    shop TEXT NOT NULL,
    title TEXT NOT NULL,
    variant TEXT NOT NULL,
    good TEXT NOT NULL,
    UNIQUE (shop, title, variant)
) STRICT;
CREATE TABLE column_match (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    shop TEXT NOT NULL UNIQUE,
    columns TEXT NOT NULL
) STRICT;

CREATE TABLE hand_over_list (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    carrier TEXT NOT NULL,
    day TEXT NOT NULL,
    number INTEGER NOT NULL,
    at INTEGER NOT NULL,
    UNIQUE (carrier, day, number)
) STRICT;
CREATE TABLE parcel (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    number TEXT NOT NULL UNIQUE,
    state TEXT NOT NULL CHECK (state IN ('planned', 'picked', 'packed', 'labelled', 'handed over', 'came back')),
    locked INTEGER NOT NULL DEFAULT 0,
    order_version INTEGER NOT NULL,
    tray TEXT NOT NULL DEFAULT '',
    round INTEGER NOT NULL DEFAULT 0,
    steps_done INTEGER NOT NULL DEFAULT 0,
    carrier TEXT NOT NULL DEFAULT '',
    service TEXT NOT NULL DEFAULT '',
    postage INTEGER,
    postage_currency TEXT,
    tracking TEXT NOT NULL DEFAULT '',
    packed_at INTEGER,
    list INTEGER REFERENCES hand_over_list (id)
) STRICT;
CREATE INDEX parcel_state ON parcel (state);
CREATE INDEX parcel_list ON parcel (list);
CREATE TABLE parcel_plan ( -- apart from the parcel: large, and seldom changed
    id INTEGER PRIMARY KEY REFERENCES parcel (id),
    document TEXT NOT NULL CHECK (json_valid(document))
) STRICT;
CREATE TABLE parcel_piece (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    parcel INTEGER NOT NULL REFERENCES parcel (id),
    order_id INTEGER NOT NULL REFERENCES orders (id),
    line INTEGER NOT NULL,
    good TEXT NOT NULL,
    count INTEGER NOT NULL CHECK (count > 0)
) STRICT;
CREATE INDEX parcel_piece_parcel ON parcel_piece (parcel);
CREATE INDEX parcel_piece_order ON parcel_piece (order_id);
CREATE TABLE weighing (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    parcel INTEGER NOT NULL REFERENCES parcel (id),
    stage TEXT NOT NULL,
    weight INTEGER NOT NULL, -- 0.1 g
    overridden INTEGER NOT NULL,
    at INTEGER NOT NULL
) STRICT;
CREATE INDEX weighing_parcel ON weighing (parcel);
CREATE TABLE postage ( -- outlives its parcel: the money is spent
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    parcel INTEGER NOT NULL,
    carrier TEXT NOT NULL,
    service TEXT NOT NULL,
    amount INTEGER NOT NULL,
    currency TEXT NOT NULL,
    number TEXT NOT NULL,
    at INTEGER NOT NULL,
    refunded INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX postage_parcel ON postage (parcel);

-- Not steps: where she stopped, and packing questions solved before.
CREATE TABLE remembered (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE solved (
    question TEXT PRIMARY KEY,
    engine INTEGER NOT NULL,
    answer TEXT NOT NULL CHECK (json_valid(answer))
) STRICT, WITHOUT ROWID;
)sql";

// What the scale was expected to say, what its reading teaches, and which goods were scanned at the bench.
constexpr auto weighings_teach = R"sql(
ALTER TABLE weighing ADD COLUMN expected INTEGER; -- 0.1 g; null: not asked
ALTER TABLE weighing ADD COLUMN spread INTEGER;
ALTER TABLE weighing ADD COLUMN lesson TEXT CHECK (lesson IS NULL OR json_valid(lesson)); -- null: teaches nothing
CREATE INDEX weighing_lesson ON weighing (id) WHERE lesson IS NOT NULL;
ALTER TABLE parcel ADD COLUMN scanned INTEGER NOT NULL DEFAULT 0;
)sql";

// What a supply cost when it came in, and from whom.
constexpr auto movements_cost = R"sql(
ALTER TABLE movement ADD COLUMN cost INTEGER; -- of all of it, with the sign of the amount; null: not known
ALTER TABLE movement ADD COLUMN cost_currency TEXT;
ALTER TABLE movement ADD COLUMN supplier TEXT NOT NULL DEFAULT '';
CREATE INDEX movement_used ON movement (kind, code) WHERE ledger = 'supplies';
CREATE INDEX parcel_packed ON parcel (packed_at) WHERE packed_at IS NOT NULL;
-- Sums of the ledger, kept beside it so that years of movements need not be added up; `verify` adds them up.
CREATE TABLE shelf (
    ledger TEXT NOT NULL,
    code TEXT NOT NULL,
    amount INTEGER NOT NULL,
    PRIMARY KEY (ledger, code)
) STRICT, WITHOUT ROWID;
INSERT INTO shelf SELECT ledger, code, sum(amount) FROM movement GROUP BY ledger, code;
CREATE TRIGGER movement_adds AFTER INSERT ON movement BEGIN
    INSERT INTO shelf VALUES (NEW.ledger, NEW.code, NEW.amount)
    ON CONFLICT DO UPDATE SET amount = amount + NEW.amount;
END;
-- Every piece of it is with a carrier: nothing is left to do, so the daily screens need not look at it.
ALTER TABLE orders ADD COLUMN done INTEGER NOT NULL DEFAULT 0;
UPDATE orders SET done = 1 WHERE EXISTS (SELECT 1 FROM parcel_piece WHERE order_id = orders.id) AND NOT EXISTS (
    SELECT 1 FROM order_line WHERE order_id = orders.id AND count > (
        SELECT coalesce(sum(parcel_piece.count), 0) FROM parcel_piece JOIN parcel ON parcel.id = parcel_piece.parcel
        WHERE parcel_piece.order_id = orders.id AND line = place AND parcel.state IN ('handed over', 'came back')));
CREATE INDEX orders_open ON orders (state) WHERE done = 0;
CREATE INDEX orders_date ON orders (date);
CREATE INDEX parcel_on_its_way ON parcel (state) WHERE state <> 'handed over';
CREATE INDEX hand_over_day ON hand_over_list (day);
)sql";

// Why a parcel came back and what became of it. Where it is sent again, what it held is owed once more.
constexpr auto parcels_come_back = R"sql(
ALTER TABLE parcel ADD COLUMN back_why TEXT NOT NULL DEFAULT '';
ALTER TABLE parcel ADD COLUMN written_off INTEGER NOT NULL DEFAULT 0;
ALTER TABLE parcel ADD COLUMN sent_again INTEGER NOT NULL DEFAULT 0;
CREATE VIEW piece_sent AS SELECT parcel_piece.*, parcel.state, parcel.locked
    FROM parcel_piece JOIN parcel ON parcel.id = parcel_piece.parcel WHERE parcel.sent_again = 0;
)sql";

// Why the scale was overruled; and what large books are asked for, kept ready by the database itself.
constexpr auto large_books_answer = R"sql(
ALTER TABLE weighing ADD COLUMN why TEXT NOT NULL DEFAULT '';
-- The part of a plan that records and the reserved supplies need (core/records/account.h, PlannedPart).
CREATE VIEW part_of_plan AS SELECT id, json_object(
    'uses', json_extract(document, '$.plan.uses'), 'closed', json_extract(document, '$.plan.closed'),
    'weight', json_extract(document, '$.plan.weight'),
    'contents', json_extract(document, '$.plan.contents_weight'),
    'seconds', coalesce(json_extract(document, '$.plan.seconds'), 0),
    'kind', coalesce(json_extract(document, '$.plan.question.outers[0].form.kind'), 'carton'),
    'lining', coalesce(json_extract(document, '$.plan.question.lining'), 0),
    'reach', (SELECT json_array(coalesce(max(json_extract(value, '$.at[0]') + json_extract(value, '$.size[0]')), 0),
                                coalesce(max(json_extract(value, '$.at[1]') + json_extract(value, '$.size[1]')), 0),
                                coalesce(max(json_extract(value, '$.at[2]') + json_extract(value, '$.size[2]')), 0))
              FROM json_each(document, '$.plan.placements'))) AS document FROM parcel_plan;
CREATE TABLE planned_part (
    id INTEGER PRIMARY KEY,
    document TEXT NOT NULL
) STRICT;
INSERT INTO planned_part SELECT * FROM part_of_plan;
CREATE TRIGGER plan_has_part AFTER INSERT ON parcel_plan BEGIN
    INSERT INTO planned_part SELECT * FROM part_of_plan WHERE id = NEW.id;
END;
CREATE TRIGGER plan_changes_part AFTER UPDATE ON parcel_plan BEGIN
    DELETE FROM planned_part WHERE id = OLD.id;
    INSERT INTO planned_part SELECT * FROM part_of_plan WHERE id = NEW.id;
END;
CREATE TRIGGER plan_leaves_part AFTER DELETE ON parcel_plan BEGIN
    DELETE FROM planned_part WHERE id = OLD.id;
END;
-- Use of each supply by day (of UTC, since 1970); `verify` adds it up.
CREATE TABLE used_on_day (
    code TEXT NOT NULL,
    day INTEGER NOT NULL,
    amount INTEGER NOT NULL, -- thousandths
    PRIMARY KEY (day, code)
) STRICT, WITHOUT ROWID;
INSERT INTO used_on_day SELECT code, step.at / 86400, -sum(amount) FROM movement JOIN step ON step.id = step
    WHERE ledger = 'supplies' AND movement.kind = 'used' GROUP BY code, step.at / 86400;
CREATE TRIGGER step_adds_use AFTER INSERT ON step BEGIN -- a step's row comes after its movements
    INSERT INTO used_on_day SELECT code, NEW.at / 86400, -sum(amount) FROM movement
        WHERE step = NEW.id AND +ledger = 'supplies' AND +kind = 'used' GROUP BY code -- +: by the step's index alone
    ON CONFLICT DO UPDATE SET amount = amount + excluded.amount;
END;
DROP INDEX movement_used;
CREATE INDEX movement_received ON movement (code) WHERE ledger = 'supplies' AND kind = 'received';
CREATE INDEX movement_of_parcel ON movement (parcel) WHERE ledger = 'goods' AND parcel IS NOT NULL;
CREATE INDEX parcel_sent_again ON parcel (id) WHERE sent_again = 1;
CREATE INDEX orders_words ON orders (number, name, postcode);
CREATE INDEX parcel_words ON parcel (number, tracking);
-- Orders whose buyers' data was erased: erased again in whatever older copy takes the book's place.
CREATE TABLE erased (
    shop TEXT NOT NULL,
    number TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (shop, number)
) STRICT, WITHOUT ROWID;
)sql";

// Versions 4 and 5 were still being written when the first books of them were made: whatever such a book lacks, it has
// from here on. And what erasing and undoing look for is found at once.
constexpr auto alike_again = R"sql(
DROP VIEW piece_sent;
CREATE VIEW piece_sent AS SELECT parcel_piece.*, parcel.state, parcel.locked
    FROM parcel_piece JOIN parcel ON parcel.id = parcel_piece.parcel WHERE parcel.sent_again = 0;
DROP TRIGGER step_adds_use;
CREATE TRIGGER step_adds_use AFTER INSERT ON step BEGIN -- a step's row comes after its movements
    INSERT INTO used_on_day SELECT code, NEW.at / 86400, -sum(amount) FROM movement
        WHERE step = NEW.id AND +ledger = 'supplies' AND +kind = 'used' GROUP BY code -- +: by the step's index alone
    ON CONFLICT DO UPDATE SET amount = amount + excluded.amount;
END;
CREATE TABLE IF NOT EXISTS erased (
    shop TEXT NOT NULL,
    number TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (shop, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX image_of_line ON image (json_extract(before, '$.order_id')) WHERE tab = 'order_line';
-- Undoing asks for later counts of what a step moved.
CREATE INDEX movement_counted ON movement (ledger, code) WHERE kind = 'counted';
)sql";

// How often a paper came out, so that the next one says that it is not the first. Not a step: what was printed lies
// there, whatever is undone.
constexpr auto prints_are_counted = R"sql(
CREATE TABLE printed (
    paper TEXT NOT NULL, -- "labels"
    of TEXT NOT NULL,    -- a parcel's number, a list, a day
    times INTEGER NOT NULL CHECK (times > 0),
    PRIMARY KEY (of, paper)
) STRICT, WITHOUT ROWID;
-- Up to now a round printed all of these, and a list was printed as it was closed.
INSERT INTO printed SELECT value, number, 1 FROM parcel, json_each(
    '["pick-list", "packing-slips", "bench-cards", "labels"]') WHERE round > 0 GROUP BY value, number;
INSERT INTO printed SELECT 'hand-over-list', 'list ' || id, 1 FROM hand_over_list;
)sql";

} // namespace

const std::vector<Migration>& migrations()
{
    static const std::vector<Migration> all{{1, first_tables},      {2, weighings_teach},    {3, movements_cost},
                                            {4, parcels_come_back}, {5, large_books_answer}, {6, alike_again},
                                            {7, prints_are_counted}};
    return all;
}

tl::expected<void, std::string> migrate(SQLite::Database& db, const std::vector<Migration>& steps)
{
    for (const Migration& step : steps) {
        try {
            SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
            // Read inside the transaction: another program may have been quicker.
            if (db.execAndGet("PRAGMA user_version").getInt() >= step.to) continue;
            db.exec(step.sql);
            db.exec(fmt::format("PRAGMA application_id = {}", book_mark));
            db.exec(fmt::format("PRAGMA user_version = {}", step.to));
            transaction.commit();
        } catch (const SQLite::Exception& failure) {
            return tl::unexpected(fmt::format("to version {}: {}", step.to, failure.what()));
        }
    }
    return {};
}

const std::vector<std::string>& tracked_tables()
{
    static const std::vector<std::string> all{"house",  "good",        "supply",       "wrapping",     "rate_sheet",
                                              "orders", "order_line",  "good_match",   "column_match", "hand_over_list",
                                              "parcel", "parcel_plan", "parcel_piece", "weighing",     "postage"};
    return all;
}

std::vector<std::string> columns_of_table(SQLite::Database& db, const std::string& table)
{
    std::vector<std::string> names;
    SQLite::Statement columns(db, "SELECT name FROM pragma_table_info(?) ORDER BY cid");
    columns.bind(1, table);
    while (columns.executeStep()) names.push_back(columns.getColumn(0).getString());
    return names;
}

void record_images(SQLite::Database& db)
{
    db.exec("CREATE TEMP TABLE current_step (id INTEGER NOT NULL)");
    for (const std::string& table : tracked_tables()) {
        std::string old_row, differs;
        for (const std::string& column : columns_of_table(db, table)) {
            old_row += fmt::format("{}'{}', OLD.\"{}\"", old_row.empty() ? "" : ", ", column, column);
            differs += fmt::format("{}OLD.\"{}\" IS NOT NEW.\"{}\"", differs.empty() ? "" : " OR ", column, column);
        }
        const auto trigger = [&](const char* event, const std::string& when, const char* row,
                                 const std::string& before) {
            db.exec(fmt::format("CREATE TEMP TRIGGER {0}_{1} AFTER {1} ON main.{0} {2} BEGIN "
                                "INSERT INTO image (step, tab, key, before) "
                                "VALUES ((SELECT id FROM current_step), '{0}', {3}.id, {4}); END",
                                table, event, when, row, before));
        };
        trigger("INSERT", "", "NEW", "NULL");
        trigger("UPDATE", "WHEN " + differs, "OLD", "json_object(" + old_row + ")");
        trigger("DELETE", "", "OLD", "json_object(" + old_row + ")");
    }
}

} // namespace stow::book
