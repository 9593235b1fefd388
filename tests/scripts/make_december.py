#!/usr/bin/env python3
"""Writes the demo's December day: 200 orders in the two shops' formats, and a count of the shelves that covers them.

    tests/scripts/make_december.py [--check]    --check: compare with the files in demo_orders/ instead of writing them

Always gives the same files: the only source of chance is the generator below. Goods, prices and what each shop calls a
good come from demo_orders/goods.csv and matches.csv, headings from the files of the normal day.
"""
import csv
import io
import pathlib
import sys

FOLDER = pathlib.Path(__file__).resolve().parents[2] / "demo_orders"


class Chance:
    """A 64-bit linear congruential generator (Knuth's MMIX constants); its high bits are good enough for a demo."""

    def __init__(self, start):
        self.state = start

    def below(self, n):
        self.state = (self.state * 6364136223846793005 + 1442695040888963407) % 2**64
        return (self.state >> 33) % n

    def one_of(self, choices):
        return choices[self.below(len(choices))]


FIRST = ("Ada Anke Bente Bram Carl Dörte Edda Emil Enno Feline Frauke Greta Hauke Hella Ida Ines Jorin Jörg Kai Karla Leo "
         "Lotte Malte Mia Nele Nils Odile Ole Peer Pia Ruth Sönke Svea Thies Tilda Till Uta Veit Wencke Wiebke").split()
LAST = ("Altkliff Birkmoor Brinkmoor Deichhorst Dünenkamp Ebbesand Flutholm Grauhoff Haldern Kajewski Koogmann Krähwinkel "
        "Lindwerder Mövenberg Müßigmann Nebelkorn Öhlenbrook Ostermoor Prielmann Quillfeld Reetkamp Rotbuch Sandhagen "
        "Schäferkoog Steinwarder Tidemoor Uferloh Watterholm Weißenhagen Wolkenhauer").split()
# Towns of each shop's own country; all of them invented.
DANISH = [("9996", "Siltholm"), ("9995", "Tangsø"), ("8995", "Mågesand"), ("7995", "Lyngvig Havn"),
          ("6995", "Strandkær"), ("5995", "Ravnsø"), ("4995", "Hvidklint")]
DANISH_STREETS = ["Bag diget", "Fyrvej", "Kirkestien", "Kranvej", "Lange Række", "Møllevang", "Torvestræde", "Værftsgade"]
GERMAN = [("18997", "Altkliff"), ("19996", "Birkfelde"), ("22996", "Kreienhagen"), ("23996", "Mövensand"),
          ("24996", "Süderhaff"), ("26996", "Ohlsiel"), ("29996", "Rotbuchen")]
GERMAN_STREETS = ["Am Speicher", "An der Schleuse", "Fährstraße", "Föhrengasse", "Grüner Weg", "Kirchsteig", "Kontorgang",
                  "Lange Reihe", "Leuchtturmweg", "Möwenstieg", "Mühlenredder", "Taubenweg", "Werftstraße"]
# Postcode, town, country as each shop writes it, and streets of the place.
ABROAD = [("4996", "Hohenlind", "Austria", "Österreich", ["Föhrengasse", "Marktsteig"]),
          ("9899 XC", "Zilverdam", "Netherlands", "Niederlande", ["Touwslagersgracht", "Havenpad"]),
          ("50997", "Saint-Orme-sur-Vire", "France", "Frankreich", ["quai des Voiliers", "rue du Phare"]),
          ("8997", "Seewil", "Switzerland", "Schweiz", ["Bahnhofsteig", "Seegasse"]),
          ("QZ9 4XU", "Merrowhythe", "United Kingdom", "Vereinigtes Königreich", ["Ropewalk Close", "Quay Lane"]),
          ("998 76", "Skärvik", "Sweden", "Schweden", ["Fyrvägen", "Hamngatan"])]
BENCH = ["INK-SEA-30"] * 5 + ["INK-NIGHT-30"] * 4 + ["INK-RUST-30", "INK-SOOT-30", "INK-DUNE-30", "INK-HEATHER-30"] * 2 + [
    "INK-SEA-50", "INK-NIGHT-50", "INK-SOOT-50", "INK-SEA-100", "INK-SOOT-100", "WAX-RED", "WAX-RED", "WAX-GREEN",
    "WAX-GOLD", "WAX-GOLD", "NIB-FINE", "NIB-FINE", "NIB-BROAD", "PEN-BEECH", "PEN-BEECH", "PEN-WALNUT", "SEAL-ANCHOR",
    "CLOTH", "BOOK-A6", "BOOK-A6", "BOOK-A5", "BOOK-A5", "BLOTTER-A5", "CARD-PACK", "CARD-GULL"]
FLAT = ["PRINT-LIGHT-A4", "PRINT-LIGHT-A4", "PRINT-TIDE", "PRINT-MOLE-A3", "CARD-GULL", "CARD-GULL", "CARD-PACK"]
SETS = ["SET-WRITER", "SET-WRITER", "SET-SEAL", "SET-DESK"]
WISHES = ["Frohe Weihnachten!", "Für lange Briefe im neuen Jahr.", "Von Herzen.", "Schreib mir bald!"]
NOTES = ["", "", "", "", "", "", "Bitte beim Nachbarn abgeben.", "Please leave it in the porch."]
ORDERS = 200
UNPAID, BAD_POSTCODE = 57, 113  # the day's two orders that have to wait


def table(name, **how):
    with open(FOLDER / name, newline="", encoding=how.get("encoding", "utf-8")) as file:
        return list(csv.reader(file, delimiter=how.get("delimiter", ",")))


def contents(i, chance):
    """Codes and counts of order i: every fourteenth is large (9 to 12 pieces), the others as a stall sells."""
    if i % 14 == 5:
        pieces = 9 + chance.below(4)
    else:
        pieces = chance.one_of([1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 4, 4, 5, 6])
    kind = chance.below(20)
    choices = FLAT if kind < 3 and pieces < 5 else SETS if kind < 6 and pieces < 2 else BENCH
    if pieces == 1 and kind == 6:
        choices = ["PRINT-CHART"]
    codes = {}
    for _ in range(pieces):
        code = chance.one_of(choices)
        codes[code] = codes.get(code, 0) + 1
    return list(codes.items())


def at_stall(i):
    """Three of five orders come from Harbour Stall."""
    return i % 5 < 3


def made_up_orders():
    chance = Chance(20261209)
    for i in range(ORDERS):
        first, last = chance.one_of(FIRST), chance.one_of(LAST)
        house = str(1 + chance.below(120))
        place = chance.one_of(ABROAD) if chance.below(6) == 0 else None
        if place:
            postcode, town, english, german, streets = place
        elif at_stall(i):
            (postcode, town), streets = chance.one_of(DANISH), DANISH_STREETS
            english, german = "Denmark", "Dänemark"
        else:
            (postcode, town), streets = chance.one_of(GERMAN), GERMAN_STREETS
            english, german = "Germany", "Deutschland"
        street = chance.one_of(streets)
        if i == BAD_POSTCODE:
            (postcode, town), english, german = ("2599", "Ohlsiel"), "Germany", "Deutschland"
        yield {"first": first, "last": last, "street": street, "house": house, "postcode": postcode, "town": town,
               "english": english, "german": german, "lines": contents(i, chance), "abroad": place is not None,
               "wish": chance.one_of(WISHES) if chance.below(7) == 0 else "", "note": chance.one_of(NOTES),
               "placed": 5 + i // 50, "by": 15 + i // 50 + (3 if place else 0), "paid": i != UNPAID}


def stall_rows(number, order, titles, prices, headings):
    """Harbour Stall: English, points, the head of an order in its first row only."""
    rows = []
    for at, (code, count) in enumerate(order["lines"]):
        title, variant = titles[code]
        row = {"Order number": number, "Item": title, "Option": variant, "Quantity": str(count),
               "Price each": prices[code], "Currency": "EUR"}
        if at == 0:
            row.update({"Placed on": f"2026-12-{order['placed']:02}", "Promised for": f"2026-12-{order['by']:02}",
                        "Recipient": f"{order['first']} {order['last']}",
                        "Address 1": f"{order['street']} {order['house']}", "Postcode": order["postcode"],
                        "Town": order["town"], "Country": order["english"], "Buyer note": order["note"],
                        "Gift": "yes" if order["wish"] else "no", "Gift message": order["wish"],
                        "Gift from": order["first"] if order["wish"] else "",
                        "Postage paid": "11.90" if order["abroad"] else "5.90",
                        "Payment": "paid" if order["paid"] else "pending", "Status": "open"})
        rows.append([row.get(heading, "") for heading in headings])
    return rows


def federkai_rows(number, order, titles, prices, headings):
    """Federkai: German, decimal commas, the head of an order repeated in each row."""
    rows = []
    for code, count in order["lines"]:
        title, variant = titles[code]
        row = {"Bestellnummer": number, "Bestelldatum": f"{order['placed']:02}.12.2026",
               "Zugesagt bis": f"{order['by']:02}.12.2026", "Vorname": order["first"], "Nachname": order["last"],
               "Straße": order["street"], "Hausnummer": order["house"], "PLZ": order["postcode"], "Ort": order["town"],
               "Land": order["german"], "Artikelnummer": code, "Artikel": title, "Ausführung": variant,
               "Menge": str(count), "Einzelpreis": prices[code].replace(".", ","), "Bemerkung": order["note"],
               "Geschenk": "ja" if order["wish"] else "nein", "Grußtext": order["wish"],
               "Geschenk von": order["first"] if order["wish"] else "",
               "Versandart": "Paket Ausland" if order["abroad"] else "Paket",
               "Versandkosten": "11,90" if order["abroad"] else "5,90",
               "Zahlungseingang": f"{order['placed'] + 1:02}.12.2026" if order["paid"] else "", "Status": "offen"}
        rows.append([row.get(heading, "") for heading in headings])
    return rows


def stock(orders, goods, parts):
    """Pieces for all orders with a few over, and a rack of outers for the season in which one size is scarce."""
    needed = {}
    for order in orders:
        for code, count in order["lines"]:
            for part, each in parts.get(code) or [(code, 1)]:
                needed[part] = needed.get(part, 0) + count * each
    rows = [["code", "kind", "counted"]]
    rows += [[code, "good", str(needed.get(code, 0) + 6)] for code in goods if not parts.get(code)]
    rack = [("LETTER", 80), ("PAD-S", 80), ("PAD-L", 50), ("BOARD-A4", 40), ("BOARD-A3", 25), ("K1", 60), ("K2", 60),
            ("K3", 18), ("K4", 60), ("K5", 40), ("K6", 30), ("K7", 20), ("K8", 12), ("TUBE-S", 15), ("TUBE-L", 15),
            ("GIFT-S", 40), ("GIFT-L", 20), ("BUBBLE", 400), ("TISSUE", 900), ("SHRED", 1500), ("KRAFT", 800),
            ("TAPE", 600), ("LABEL", 600), ("THANKS", 400), ("CARE", 200), ("SWATCH", 150), ("GIFT-CARD", 120),
            ("RIBBON", 120), ("SHEET-300", 60)]
    return rows + [[code, "supply", str(count)] for code, count in rack]


def parts_of(text):
    """'2 INK + PEN' to [('INK', 2), ('PEN', 1)]."""
    result = []
    for part in filter(None, (p.strip() for p in text.split("+"))):
        count, _, code = part.rpartition(" ")
        result.append((code, int(count or 1)))
    return result


def as_bytes(rows, delimiter=",", encoding="utf-8"):
    text = io.StringIO()
    csv.writer(text, delimiter=delimiter, lineterminator="\r\n").writerows(rows)
    return text.getvalue().encode(encoding)


def main():
    goods_table = table("goods.csv")
    goods = [dict(zip(goods_table[0], row)) for row in goods_table[1:]]
    prices = {good["code"]: good["price"] for good in goods}
    parts = {good["code"]: parts_of(good["parts"]) for good in goods}
    titles = {"Harbour Stall": {}, "Federkai": {}}
    for shop, title, variant, code in table("matches.csv")[1:]:
        titles[shop][code] = (title, variant)
    stall = table("harbour_stall.csv")[:1]
    federkai = table("federkai.csv", delimiter=";", encoding="cp1252")[:1]
    orders = list(made_up_orders())
    for i, order in enumerate(orders):
        if at_stall(i):
            stall += stall_rows(f"HS-{2200 + i}", order, titles["Harbour Stall"], prices, stall[0])
        else:
            federkai += federkai_rows(str(7400 + i), order, titles["Federkai"], prices, federkai[0])
    files = {"december_harbour_stall.csv": as_bytes(stall),
             "december_federkai.csv": as_bytes(federkai, ";", "cp1252"),
             "december_stock.csv": as_bytes(stock(orders, prices, parts))}
    if "--check" in sys.argv:
        stale = [name for name, content in files.items() if (FOLDER / name).read_bytes() != content]
        sys.exit(f"not as the script writes them: {', '.join(stale)}" if stale else 0)
    for name, content in files.items():
        (FOLDER / name).write_bytes(content)


main()
