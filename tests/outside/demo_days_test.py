#!/usr/bin/env python3
"""Both demo days as a user runs them, judged from outside.

- The day holds what it is meant to show: joined, split, rolled, gift box in a carton, abroad, called off after picking...
- Every placement passes check_plans.py, which shares no code with the program, and `stowbench verify`.
- The papers are there, their codes are read by zbarimg and name the parcels, their text is read by pdftotext.
- December: every order has a verified parcel; a copy of the day is the same day again.

  demo_days_test.py PATH_TO_STOWBENCH
"""
import contextlib
import json
import os
import pathlib
import sqlite3
import subprocess
import sys
import tempfile
import unittest

STOWBENCH = ""
SCRIPTS = pathlib.Path(__file__).resolve().parents[1] / "scripts"


def run(*command, **options):
    return subprocess.run([str(c) for c in command], capture_output=True, **options)


class Day:
    """One run of the demo."""

    def __init__(self, folder, orders):
        self.folder = pathlib.Path(folder)
        self.done = run(STOWBENCH, "--json", "demo", "--orders", orders, "--out", folder)
        self.plan = json.loads(self.done.stdout)
        self.parcels = self.plan["parcels"]
        (self.folder / "plan.json").write_bytes(self.done.stdout)

    def judge(self):
        return run(sys.executable, SCRIPTS / "check_plans.py", self.folder / "plan.json")


def pieces_of(item):
    return item["count"] * (sum(pieces_of(i) for i in item["items"]) if item["shape"] == "inside" else 1)


class GermanDay(unittest.TestCase):
    """Her own papers speak the system's language, buyers' papers the buyer's, and customs data English."""

    def test_languages_of_papers(self):
        with tempfile.TemporaryDirectory() as folder:
            env = dict(os.environ, LC_ALL="de_DE.UTF-8", LANG="de_DE.UTF-8")
            self.assertEqual(run(STOWBENCH, "demo", "--out", folder, env=env).returncode, 0)

            def text(paper):
                return run("pdftotext", "-layout", pathlib.Path(folder) / f"{paper}.pdf", "-").stdout.decode()

            self.assertIn("Sammelliste", text("pick-list"))
            self.assertIn("Customs data", text("customs"))
            self.assertNotIn("Zollangaben", text("customs"))
            for title in ("Packing slip", "Lieferschein", "Bon de livraison"):
                self.assertIn(title, text("packing-slips"))


class SmallDay(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.day = Day(cls.folder.name, "small")

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def ask(self, sql):
        with contextlib.closing(sqlite3.connect(f"file:{self.folder.name}/demo.book?mode=ro", uri=True)) as book:
            return book.execute(sql).fetchall()

    def test_only_planned_problems(self):
        self.assertEqual(self.day.done.returncode, 0, self.day.done.stderr.decode())

    def test_holds_what_it_is_meant_to_show(self):
        orders = self.ask("SELECT count(*) FROM orders")[0][0]
        self.assertGreaterEqual(orders, 24)
        long_orders = self.ask("SELECT order_id FROM order_line GROUP BY order_id HAVING sum(count) >= 3")
        self.assertGreaterEqual(len(long_orders), 6)
        parcels = self.day.parcels
        self.assertTrue(any(len(p["orders"]) == 2 for p in parcels), "two orders joined")
        numbers = [n for p in parcels for n in p["orders"]]
        self.assertTrue(any(numbers.count(n) > 1 for n in numbers), "one order split")
        self.assertTrue(any(i["shape"] == "roll" for p in parcels for i in p["question"]["items"]), "one rolled")
        self.assertTrue(any(i["shape"] == "inside" for p in parcels for i in p["question"]["items"]), "a gift box inside")
        kinds = {o["id"]: o["kind"] for p in parcels for o in p["question"]["outers"]}
        self.assertGreaterEqual(sum(kinds[p["outer"]] in ("mailer", "padded-mailer") for p in parcels), 2)
        countries = [c for (c,) in self.ask("SELECT country FROM orders")]
        self.assertGreaterEqual(len([c for c in countries if c in ("GB", "CH", "US", "NO")]), 3)
        self.assertTrue(self.day.plan["stuck"], "one is short of goods")

    def test_one_is_called_off_after_picking_and_one_has_no_known_code(self):
        off = self.ask("""SELECT count(*) FROM orders JOIN parcel_piece ON parcel_piece.order_id = orders.id
                          JOIN parcel ON parcel.id = parcel_piece.parcel
                          WHERE orders.called_off AND parcel.state = 'picked'""")
        self.assertGreaterEqual(off[0][0], 1)
        self.assertGreaterEqual(self.ask("SELECT count(*) FROM order_line WHERE good = ''")[0][0], 1)

    def test_every_placement_is_sound(self):
        judged = self.day.judge()
        self.assertEqual(judged.returncode, 0, judged.stdout.decode())
        verified = run(STOWBENCH, "--book", f"{self.folder.name}/demo.book", "verify")
        self.assertEqual(verified.returncode, 0, verified.stdout.decode())

    def test_papers_read_back(self):
        numbers = {p["number"] for p in self.day.parcels}
        for paper, begins in (("packing-slips", "SB2:P:"), ("labels", "SB2:L:")):
            pages = self.day.folder / paper
            pages.mkdir()
            run("pdftoppm", "-r", "203", "-png", self.day.folder / f"{paper}.pdf", pages / "page")
            read = set()
            for page in sorted(pages.glob("*.png")):
                for code in run("zbarimg", "--raw", "-q", page).stdout.decode().split():
                    self.assertTrue(code.startswith(begins), code)
                    read.add(code.split(":")[2])
            self.assertEqual(read, numbers, paper)
        words = run("pdftotext", self.day.folder / "pick-list.pdf", "-").stdout.decode()
        self.assertIn("Pick list", words)
        self.assertTrue(list(self.day.folder.glob("hand-over-list-*.pdf")))

    def test_papers_printed_again_say_so(self):
        def text(folder, paper):
            return run("pdftotext", "-layout", folder / f"{paper}.pdf", "-").stdout.decode()

        first = self.day.folder
        marked = {"pick-list": "Reprint (print ", "pick-list-by-order": "Reprint (print ", "labels": "print ",
                  "bench-cards": "Reprint (print "}
        for paper, words in marked.items():
            self.assertNotIn(words, text(first, paper))
        with tempfile.TemporaryDirectory() as folder:
            for print_number in (1, 2, 3):
                done = run(STOWBENCH, "--book", first / "demo.book", "papers", "--out", folder)
                self.assertEqual(done.returncode, 0, done.stderr.decode())
                slips = text(pathlib.Path(folder), "packing-slips")
                for paper, words in marked.items():
                    if print_number == 1:
                        self.assertNotIn(words, text(pathlib.Path(folder), paper))
                    else:
                        self.assertIn(f"{words}{print_number}", text(pathlib.Path(folder), paper))
                for words in (f"Reprint (print {print_number})", f"Nachdruck ({print_number}. Druck)"):
                    self.assertEqual(words in slips, print_number > 1, words)  # in the buyer's language
                self.assertNotIn("eprint", text(pathlib.Path(folder), "customs"))


class DecemberDay(unittest.TestCase):
    def test_every_order_has_a_sound_parcel_and_the_day_repeats(self):
        with tempfile.TemporaryDirectory() as first, tempfile.TemporaryDirectory() as second:
            day = Day(first, "december")
            self.assertEqual(day.done.returncode, 0, day.done.stderr.decode())
            self.assertEqual(day.judge().returncode, 0)
            self.assertEqual(day.plan["stuck"], [])
            self.assertEqual(len({n for p in day.parcels for n in p["orders"]}), 200 - len(self.held_back(first)))
            large = sum(count for pieces, count in day.plan["pieces_histogram"].items() if 9 <= int(pieces) <= 12)
            self.assertGreaterEqual(large, 10)
            again = Day(second, "december")
            for p in day.parcels + again.parcels:
                p.pop("prove_ms", None)
            self.assertEqual(day.parcels, again.parcels)

    def held_back(self, folder):
        with contextlib.closing(sqlite3.connect(f"file:{folder}/demo.book?mode=ro", uri=True)) as book:
            return book.execute("SELECT id FROM orders WHERE state = 'arrived'").fetchall()


if __name__ == "__main__":
    STOWBENCH = sys.argv.pop(1)
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    unittest.main()
