#!/usr/bin/env python3
"""Ten kinds of wrong input, as a user meets them: each gets a clear message and an exit code, and loses nothing.

  bad_input_test.py PATH_TO_STOWBENCH
"""
import contextlib
import json
import os
import pathlib
import sqlite3
import subprocess
import sys
import tempfile
import threading
import unittest

STOWBENCH = ""
ORDERS = "Order number,Date,Name,Street,Postcode,Town,Country,Item,Quantity,Price,Currency\n"
GOOD_ORDER = "1001,2026-11-20,Ada Brinkmoor,Lindenreihe 14,24937,Flintborg,DE,Bottled ink,1,11.90,EUR\n"
GOODS = "code,name,shape,length_mm,width_mm,height_mm,weight_g,turns,wrapping\n"
GOOD_GOOD = "NIB-1,Nib tin,block,40,30,10,22,any,\n"


class BadInput(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(self.enterContext(tempfile.TemporaryDirectory()))
        self.book = self.folder / "shop.book"

    def run_it(self, *arguments, feed=None):
        return subprocess.run([STOWBENCH, "--book", self.book, *arguments], capture_output=True, stdin=feed, timeout=300)

    def take_in(self, kind, content, name="file.csv"):
        file = self.folder / name
        file.write_bytes(content if isinstance(content, bytes) else content.encode())
        done = self.run_it("--json", "take-in", kind, file, *(["--shop", "Test Stall"] if kind == "orders" else []))
        return done, done.stderr.decode()

    def counts(self, done):
        return json.loads(done.stdout)

    def assert_sound(self):
        self.assertEqual(self.run_it("verify").returncode, 0)

    def rows(self, table):
        with contextlib.closing(sqlite3.connect(self.book)) as book:
            return book.execute(f"SELECT count(*) FROM {table}").fetchone()[0]

    def keep_one_order(self):
        done, _ = self.take_in("orders", ORDERS + GOOD_ORDER, "kept.csv")
        self.assertEqual(self.counts(done)["new"], 1)

    def assert_order_kept(self):
        done, _ = self.take_in("orders", ORDERS + GOOD_ORDER, "kept.csv")
        self.assertEqual(self.counts(done)["unchanged"], 1)
        self.assert_sound()

    def test_missing_column(self):
        self.keep_one_order()
        done, words = self.take_in("orders", "Order number,Date,Street,Town,Item\n1002,2026-11-20,Way 1,Flintborg,Ink\n")
        self.assertEqual(done.returncode, 3)
        self.assertIn("missing", words)
        self.assertIn("file.csv", words)
        self.assert_order_kept()

    def test_empty_file(self):
        self.keep_one_order()
        done, words = self.take_in("orders", "")
        self.assertEqual(done.returncode, 3)
        self.assertIn("is empty", words)
        self.assert_order_kept()

    def test_binary_file(self):
        self.keep_one_order()
        done, words = self.take_in("orders", bytes(range(256)) * 40, "photo.png")
        self.assertEqual(done.returncode, 3)
        self.assertIn("photo.png", words)
        self.assertIn("not a table", words)
        self.assert_order_kept()

    def test_one_gigabyte_line_through_a_pipe(self):
        self.keep_one_order()
        read_end, write_end = os.pipe()

        def pour():
            chunk = b"x" * (1 << 20)
            try:
                with os.fdopen(write_end, "wb") as pipe:
                    for _ in range(1024):
                        pipe.write(chunk)
            except BrokenPipeError:
                pass  # it was refused long before the end, as it should

        threading.Thread(target=pour, daemon=True).start()
        with os.fdopen(read_end, "rb") as pipe:
            done = self.run_it("take-in", "orders", "/dev/stdin", feed=pipe)
        self.assertEqual(done.returncode, 3)
        self.assertIn("longer than", done.stderr.decode())
        self.assert_order_kept()

    def test_negative_weight(self):
        done, words = self.take_in("goods", GOODS + GOOD_GOOD + "NIB-2,Other tin,block,40,30,10,-5,any,\n")
        self.assertEqual(done.returncode, 1)
        self.assertEqual(self.counts(done)["new"], 1)  # the good row is there
        self.assertIn("row 3, column weight_g", words)
        self.assertIn("more than zero", words)
        self.assert_sound()

    def test_unknown_code(self):
        done, words = self.take_in("goods", GOODS + GOOD_GOOD + "NIB-2,Other tin,block,40,30,10,5,any,GOLD-LEAF\n")
        self.assertEqual(done.returncode, 1)
        self.assertEqual(self.counts(done)["new"], 1)
        self.assertIn("GOLD-LEAF", words)
        self.assertIn("not known", words)
        self.assert_sound()

    def test_duplicate_order(self):
        self.keep_one_order()
        twice = ORDERS + GOOD_ORDER.replace("1001", "1002") + GOOD_ORDER.replace("1001", "1002").replace("Ada", "Eve")
        done, words = self.take_in("orders", twice)
        self.assertEqual(done.returncode, 3 if self.counts(done)["new"] == 0 else 1)
        self.assertIn("1002", words)
        self.assert_order_kept()
        # The same file again changes nothing either.
        steps = self.rows("step")
        self.take_in("orders", ORDERS + GOOD_ORDER, "kept.csv")
        self.assertEqual(self.rows("step"), steps)

    def test_bad_postcode(self):
        done, words = self.take_in("orders", ORDERS + GOOD_ORDER + GOOD_ORDER.replace("1001", "1002").replace("24937", "249"))
        self.assertEqual(done.returncode, 1)
        self.assertIn("249", words)
        self.assertIn("postcode", words)
        self.assertEqual(self.counts(done)["new"], 2)  # taken, and held back until it is mended
        self.assert_sound()

    def test_unknown_currency(self):
        done, words = self.take_in("orders", ORDERS + GOOD_ORDER + GOOD_ORDER.replace("1001", "1002").replace("EUR", "EUX"))
        self.assertEqual(done.returncode, 1)
        self.assertIn("EUX", words)
        self.assertIn("currency", words)
        self.assertEqual(self.counts(done)["new"], 1)
        self.assert_sound()

    def test_book_of_a_newer_version(self):
        self.keep_one_order()
        with contextlib.closing(sqlite3.connect(self.book)) as book:
            book.execute("PRAGMA user_version = 9999")
            book.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        before = self.book.read_bytes()
        done = self.run_it("plan")
        self.assertEqual(done.returncode, 4)
        self.assertIn("newer", done.stderr.decode())
        self.assertEqual(self.book.read_bytes(), before)


if __name__ == "__main__":
    STOWBENCH = sys.argv.pop(1)
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    unittest.main()
