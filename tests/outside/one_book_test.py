#!/usr/bin/env python3
"""Several programs on one shop book: what one finished the others see, nothing is lost, nothing is done twice, and who
cannot go on is told why.

- A window that is open keeps a second one off the same book; killed, it leaves no lock behind.
- Commands work beside an open window; what would take the book away from under it is refused.
- Commands started all at once: each is done once, or refused with a reason and done when it is tried again.

  one_book_test.py PATH_TO_STOWBENCH
"""
import contextlib
import json
import os
import pathlib
import signal
import sqlite3
import stat
import subprocess
import sys
import tempfile
import time
import unittest

STOWBENCH = ""
ORDERS = "Order number,Date,Name,Street,Postcode,Town,Country,Item,Quantity,Price,Currency\n"
REASONS = ("is in use by another program", "Another program is writing")


class Window:
    def __init__(self, book, runtime):
        env = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", XDG_RUNTIME_DIR=str(runtime))
        self.process = subprocess.Popen([STOWBENCH, "--book", str(book)], env=env, stderr=subprocess.PIPE)
        os.set_blocking(self.process.stderr.fileno(), False)
        self.heard = ""

    def said(self):
        self.heard += (self.process.stderr.read() or b"").decode(errors="replace")
        return self.heard

    def end(self, how=signal.SIGKILL):
        self.process.send_signal(how)
        self.process.wait()
        self.process.stderr.close()


def wait_for(condition, seconds=60):
    end = time.monotonic() + seconds
    while not condition() and time.monotonic() < end:
        time.sleep(0.05)
    return condition()


class Windows(unittest.TestCase):
    def test_one_window_a_book_and_a_copy_every_day(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder)
            path.chmod(0o700)
            book = path / "shop.book"
            copies = path / "shop copies"

            def copied():
                return list(copies.glob("*.book"))

            first = Window(book, path)
            try:
                self.assertTrue(wait_for(copied), "no copy of the day: " + first.said())
                second = Window(book, path)
                try:
                    self.assertTrue(wait_for(lambda: "open in another window" in second.said()), second.said())
                finally:
                    second.end()
                self.assertNotIn("another window", first.said())
            finally:
                first.end()
            for copy in copied():
                self.assertEqual(stat.S_IMODE(copy.stat().st_mode), 0o600)
                self.assertEqual(sqlite3.connect(copy).execute("PRAGMA integrity_check").fetchone(), ("ok",))
                copy.unlink()
            third = Window(book, path)  # the first one was killed
            try:
                self.assertTrue(wait_for(copied), "it did not open: " + third.said())
                self.assertNotIn("another window", third.said())
            finally:
                third.end()


def order(number):
    return f"{number},2026-11-20,Ada Brinkmoor,Lindenreihe 14,24937,Flintborg,DE,Bottled ink,1,11.90,EUR\n"


class Together(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(self.enterContext(tempfile.TemporaryDirectory()))
        self.folder.chmod(0o700)
        done = subprocess.run([STOWBENCH, "demo", "--out", self.folder / "day"], capture_output=True)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.book = self.folder / "day" / "demo.book"

    def start(self, *arguments):
        env = dict(os.environ, QT_QPA_PLATFORM="offscreen", LC_ALL="C.UTF-8")
        return subprocess.Popen([STOWBENCH, "--book", self.book, "--json", *arguments], env=env, text=True,
                                stdout=subprocess.PIPE, stderr=subprocess.PIPE)

    def run_it(self, *arguments):
        process = self.start(*arguments)
        out, err = process.communicate(timeout=300)
        return process.returncode, out, err

    def all_at_once(self, commands):
        """Answers of all, in order. One that was too late says so in words, having done nothing; it is tried again."""
        processes = [self.start(*command) for command in commands]
        answers = []
        for command, process in zip(commands, processes):
            out, err = process.communicate(timeout=300)
            code = process.returncode
            while code == 4:
                self.assertTrue(any(reason in err for reason in REASONS), err)
                code, out, err = self.run_it(*command)
            answers.append((code, out, err))
        return answers

    def ask(self, sql):
        with contextlib.closing(sqlite3.connect(self.book)) as book:
            return book.execute(sql).fetchall()

    def on_hand(self, code):
        return self.ask(f"SELECT sum(amount) FROM movement WHERE ledger = 'supplies' AND code = '{code}'")[0][0]

    def assert_sound(self):
        code, out, err = self.run_it("verify")
        self.assertEqual((code, json.loads(out)["sound"]), (0, True), out + err)

    def file(self, name, *numbers):
        file = self.folder / name
        file.write_text(ORDERS + "".join(order(number) for number in numbers))
        return file

    def test_every_delivery_is_booked_once(self):
        before, steps = self.on_hand("K2"), len(self.ask("SELECT id FROM step"))
        answers = self.all_at_once([("supplies", "receive", "K2", str(n)) for n in range(1, 17)])
        self.assertEqual([code for code, _, _ in answers], [0] * 16)
        self.assertEqual(self.on_hand("K2") - before, sum(range(1, 17)) * 1000)
        self.assertEqual(len(self.ask("SELECT id FROM step")) - steps, 16)
        self.assert_sound()

    def test_the_same_file_from_all_sides_comes_in_once(self):
        same = self.file("same.csv", *range(5001, 5021))
        others = [self.file(f"own_{n}.csv", 6000 + n, 6100 + n) for n in range(4)]
        commands = [("take-in", "orders", str(same), "--shop", "Test Stall")] * 6
        commands += [("take-in", "orders", str(file), "--shop", "Test Stall") for file in others]
        answers = self.all_at_once(commands)
        new = [json.loads(out)["new"] for _, out, _ in answers]
        self.assertEqual(sorted(new[:6]), [0] * 5 + [20])
        self.assertEqual(new[6:], [2] * 4)
        count = self.ask("SELECT count(*), count(DISTINCT number) FROM orders WHERE shop = 'Test Stall'")
        self.assertEqual(count, [(28, 28)])
        self.assert_sound()

    def test_one_list_for_the_courier(self):
        carrier, labelled = self.ask("SELECT carrier, count(*) FROM parcel WHERE state = 'labelled' GROUP BY carrier")[0]
        answers = self.all_at_once([("hand-over", carrier, "--out", str(self.folder))] * 6)
        lists = [json.loads(out) for code, out, _ in answers if code == 0]
        self.assertEqual([made["parcels"] for made in lists], [labelled])
        for code, _, err in answers:
            self.assertIn(code, (0, 1))
            self.assertTrue(code == 0 or err.strip(), "refused without a word")
        self.assertEqual(self.ask(f"SELECT count(*) FROM parcel WHERE state = 'labelled' AND carrier = '{carrier}'"), [(0,)])
        self.assert_sound()

    def test_planning_while_others_write(self):
        plans = [("plan", "--day", "2026-11-25")] * 3
        deliveries = [("supplies", "receive", "K2", "1")] * 6
        answers = self.all_at_once([*plans, *deliveries])
        for code, _, err in answers:
            self.assertIn(code, (0, 1, 3), err)
            self.assertTrue(code != 3 or err.strip(), "refused without a word")
        twice = self.ask("SELECT parcel_piece.order_id, line, sum(parcel_piece.count) AS packed, order_line.count AS ordered "
                         "FROM parcel_piece JOIN order_line ON order_line.order_id = parcel_piece.order_id "
                         "AND place = line GROUP BY 1, 2 HAVING packed > ordered")
        self.assertEqual(twice, [])
        self.assert_sound()

    def test_beside_a_program_that_does_not_let_go(self):
        before = self.ask("SELECT count(*) FROM step")
        with contextlib.closing(sqlite3.connect(self.book, isolation_level=None)) as other:
            other.execute("BEGIN IMMEDIATE")
            code, _, err = self.run_it("supplies", "receive", "K2", "5")
            self.assertEqual(code, 4)
            self.assertTrue(any(reason in err for reason in REASONS), err)
            other.execute("ROLLBACK")
        self.assertEqual(self.ask("SELECT count(*) FROM step"), before)
        self.assertEqual(self.run_it("supplies", "receive", "K2", "5")[0], 0)
        self.assert_sound()

    def test_commands_beside_a_window(self):
        window = Window(self.book, self.folder)
        try:
            copies = self.book.parent / "demo copies"
            self.assertTrue(wait_for(lambda: list(copies.glob("*.book"))), "it did not open: " + window.said())
            before = self.on_hand("K2")
            answers = self.all_at_once([("supplies", "receive", "K2", "1")] * 4)
            self.assertEqual([code for code, _, _ in answers], [0] * 4)
            self.assertEqual(self.on_hand("K2") - before, 4000)
            copy = self.folder / "copy.book"
            self.assertEqual(self.run_it("backup", str(copy))[0], 0)
            code, _, err = self.run_it("restore", str(copy))
            self.assertEqual(code, 3)
            self.assertIn("in use", err)
            self.assert_sound()
            self.assertIsNone(window.process.poll(), "the window ended: " + window.said())
        finally:
            window.end()
        self.assertEqual(self.run_it("restore", str(copy))[0], 0)
        self.assert_sound()


if __name__ == "__main__":
    STOWBENCH = sys.argv.pop(1)
    unittest.main()
