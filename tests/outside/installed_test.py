#!/usr/bin/env python3
"""The program as it is installed: every file in its place, the demo day from them, no command left out of the texts.

Sources: Desktop Entry Specification 1.5 (required keys), AppStream 0.16 (required tags of a desktop application).

  installed_test.py BUILD_DIRECTORY
"""
import configparser
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree

BUILD = ""


class Installed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.root = pathlib.Path(cls.folder.name) / "usr"
        subprocess.run(["cmake", "--install", BUILD, "--prefix", str(cls.root)], check=True, capture_output=True)
        cls.program = cls.root / "bin" / "stowbench"

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_demo_day_from_its_own_files(self):
        goods = self.root / "share/stowbench/demo_orders"
        self.assertTrue(any(goods.iterdir()))
        out = pathlib.Path(self.folder.name) / "day"
        done = subprocess.run([self.program, "demo", "--out", str(out)], capture_output=True)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertTrue(any(out.glob("**/*.pdf")))

    def test_every_command_is_in_the_texts(self):
        said = subprocess.run([self.program, "--help"], capture_output=True, text=True, check=True).stdout
        commands = re.findall(r"^  ([a-z][a-z-]*)  ", said.split("Subcommands:")[1], re.M)
        self.assertGreater(len(commands), 10)
        completion = (self.root / "share/bash-completion/completions/stowbench").read_text()
        offered = set(re.search(r'-W "([^"]*)"', completion).group(1).replace("\\\n", " ").split())
        manual = set(re.findall(r"^\.B ([a-z][a-z-]*)$", (self.root / "share/man/man1/stowbench.1").read_text(), re.M))
        self.assertEqual({word for word in offered if not word.startswith("-")}, set(commands))
        self.assertEqual(manual - {"stowbench"}, set(commands))

    def test_desktop_entry(self):
        parsed = configparser.ConfigParser(interpolation=None)
        parsed.optionxform = str
        parsed.read(self.root / "share/applications/stowbench.desktop")
        entry = parsed["Desktop Entry"]
        self.assertEqual(entry["Type"], "Application")
        self.assertTrue((self.root / "bin" / entry["Exec"]).is_file())
        self.assertTrue((self.root / f"share/icons/hicolor/scalable/apps/{entry['Icon']}.svg").is_file())
        about = ElementTree.parse(self.root / "share/metainfo/stowbench.metainfo.xml").getroot()
        for tag in ("id", "name", "summary", "description", "metadata_license", "project_license"):
            self.assertIsNotNone(about.find(tag), tag)
        self.assertEqual(about.find("launchable").text, "stowbench.desktop")


if __name__ == "__main__":
    BUILD = sys.argv.pop(1)
    unittest.main()
