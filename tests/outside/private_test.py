#!/usr/bin/env python3
"""What leaves the program, seen from outside.

- A demo day opens no socket of the internet (strace; skipped where the system does not let it trace).
- The book, its copies and all papers are readable by their owner only; file names tell nothing of a buyer.
- What is forgotten is in no byte of the book, nor of the copies beside it, nor of another one once that is restored.

  private_test.py PATH_TO_STOWBENCH
"""
import os
import pathlib
import re
import shutil
import sqlite3
import stat
import subprocess
import sys
import tempfile
import unittest

STOWBENCH = ""


def may_trace():
    return subprocess.run(["strace", "-o", "/dev/null", "true"], capture_output=True).returncode == 0


class DemoDay(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.path = pathlib.Path(cls.folder.name)
        cls.trace = cls.path / "trace"
        tracing = ["strace", "-f", "-e", "trace=socket,connect,sendto", "-o", str(cls.trace)] if may_trace() else []
        # The leak check of a sanitized build traces the program as well, and there can be one tracer only.
        environment = {**os.environ, "ASAN_OPTIONS": "detect_leaks=0"} if tracing else None
        cls.done = subprocess.run([*tracing, STOWBENCH, "demo", "--out", str(cls.path / "day")], capture_output=True,
                                  env=environment)

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_no_internet(self):
        self.assertEqual(self.done.returncode, 0, self.done.stderr)
        if not self.trace.exists():
            self.skipTest("strace may not trace here")
        said = self.trace.read_text(errors="replace")
        self.assertIn("exited with 0", said)  # the trace is one of the whole day
        self.assertEqual(re.findall(r".*AF_INET.*", said), [])

    def test_only_hers(self):
        written = list((self.path / "day").rglob("*"))
        self.assertIn("labels.pdf", [each.name for each in written])
        for each in [self.path / "day", *written]:
            self.assertEqual(stat.S_IMODE(each.stat().st_mode) & 0o077, 0, each)

    def test_names_of_files_tell_nothing(self):
        rows = sqlite3.connect(self.path / "day" / "demo.book").execute("SELECT name, postcode, town FROM orders")
        words = {w.lower() for row in rows for cell in row for w in re.findall(r"\w{4,}", cell or "")}
        self.assertGreater(len(words), 30)
        files = [f for f in (self.path / "day").rglob("*") if f.is_file()]
        self.assertGreater(len(files), 5)
        for file in files:
            self.assertFalse(words & {w.lower() for w in re.findall(r"\w{4,}", file.stem)}, file)


class Forgotten(unittest.TestCase):
    """After `forget` no byte of the book, and none of a copy put in its place, holds what it held of the buyers."""

    def run_it(self, book, *arguments):
        done = subprocess.run([STOWBENCH, "--book", str(book), *arguments], capture_output=True, text=True)
        self.assertEqual(done.returncode, 0, done.stderr)
        return done.stdout

    def test_from_book_and_copies(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder)
            subprocess.run([STOWBENCH, "demo", "--out", str(path / "day")], capture_output=True, check=True)
            book, copy = path / "day" / "demo.book", path / "copy.book"
            with sqlite3.connect(book) as typed:  # what the carrier and she may have added
                typed.execute("UPDATE parcel SET tracking = 'TRACKED-' || id, back_why = 'she moved, says no. ' || id")
            typed.close()
            self.run_it(book, "backup", str(copy))
            beside = [book.with_name("demo.book.version-3"), book.with_name("demo.book.before-restore"),
                      book.parent / "demo copies" / "2026-11-25.book"]
            beside[2].parent.mkdir()
            for each in beside:
                shutil.copy(copy, each)
            database = sqlite3.connect(book)
            gone = database.execute(
                "SELECT name, street, contact FROM orders WHERE done = 1 AND name <> ''"
            ).fetchall()
            numbers = database.execute(
                "SELECT DISTINCT tracking, back_why FROM parcel JOIN parcel_piece ON parcel.id = parcel "
                "JOIN orders ON orders.id = order_id WHERE done = 1"
            ).fetchall()
            self.assertGreater(len(numbers), 0)
            staying = database.execute("SELECT name, street, contact FROM orders WHERE done = 0").fetchall()
            database.close()
            self.assertGreater(len(gone), 0)
            kept = " ".join(cell for row in staying for cell in row)  # some buyers have another order open
            traces = {t for row in gone + numbers for t in row if len(t) > 6 and t not in kept}
            self.assertGreater(len(traces), 2)
            for each in [copy, *beside]:
                self.assertTrue(any(t.encode() in each.read_bytes() for t in traces), each)

            said = self.run_it(book, "forget", "--before", "2099-01-01")
            self.assertIn(f"{len(gone)} ", said)
            for each in [book, *beside]:
                self.assert_clean(each, traces)
                self.assertEqual(stat.S_IMODE(each.stat().st_mode), 0o600)
            self.assertEqual(len(sqlite3.connect(book).execute("SELECT * FROM erased").fetchall()), len(gone))

            self.run_it(book, "restore", str(copy))
            self.assert_clean(book, traces)

    def assert_clean(self, book, traces):
        sqlite3.connect(book).execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall()
        held = b"".join(f.read_bytes() for f in book.parent.glob(book.name) if f.is_file())
        for trace in traces:
            self.assertNotIn(trace.encode(), held, trace)


if __name__ == "__main__":
    STOWBENCH = sys.argv.pop(1)
    unittest.main()
