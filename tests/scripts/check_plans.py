#!/usr/bin/env python3
"""Judges packing plans again, sharing no code with the program.

Reads a JSON document of plans, {"parcels": [{"number": ..., "question": {...}, "answer": {...}}, ...]} or the bare list;
question and answer as `stowbench fit` takes and gives them (DEVELOPERS.md, "fit: question"). For every answer that says
"fits" it checks, in whole tenths of a millimetre:

  complete  every copy of every item is there once, nothing else
  turned    each stands in a turn that its item allows
  inside    within the lined interior, above the bed
  apart     one gap between any two (upright round goods as circles)
  sleeve    t + w <= width - ease and t + l <= length - ease around what lies in a mailer
  tube      within the round section
  load      no heavier than the outer may hold

and the same for what lies in gift boxes. Exit: 0 sound, 1 violations (listed), 4 unreadable.

  check_plans.py FILE        check a file ("-": standard input)
  check_plans.py --self-test shift, turn, drop and enlarge things and expect an objection each time
"""
import copy
import json
import math
import sys
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal
from itertools import combinations, permutations


def tenths(value, rounding):
    return int((Decimal(value) * 10).to_integral_value(rounding))


def up(values):  # goods, gaps and linings
    return [tenths(v, ROUND_CEILING) for v in values]


def down(values):  # interiors
    return [tenths(v, ROUND_FLOOR) for v in values]


class Body:
    """One placement, with the item it is a copy of."""

    def __init__(self, item, placement):
        self.item = item
        self.name = f"{placement['item']} {placement['copy']}"
        self.at = up(placement["at_mm"])
        self.size = up(placement["size_mm"])
        self.end = [a + s for a, s in zip(self.at, self.size)]
        self.axis = placement.get("axis")
        self.content = placement.get("content", [])

    def is_circle(self, kind):
        round_shape = self.item["shape"] in ("cylinder", "roll") or (self.item["shape"] == "sheet" and self.axis)
        return bool(round_shape) and self.axis == "z" and kind not in ("mailer", "padded-mailer")


def shape_size(item, outers):
    """The block around the item as its measures are given; of an item in a gift box, that box closed."""
    if item["shape"] == "inside":
        box = outers[item["packed_in"]]
        size = up(box.get("outer_mm", box["inner_mm"]))
        size[2] += tenths(item.get("bow_mm", 0), ROUND_CEILING)
        return size
    size = up(item["size_mm"])
    if item["shape"] == "cylinder":
        return [size[0], size[0], size[1]]
    if item["shape"] == "roll":
        return [size[1], size[0], size[0]]
    return size


def may_stand(item, size):
    """Which of the three edges may be vertical."""
    turns = item.get("turns", "any")
    if isinstance(turns, dict):
        return [edge in turns["vertical"] for edge in ("l", "w", "h")]
    if item["shape"] == "inside" or turns == "upright":
        return [False, False, True]
    if turns == "flat":
        return [edge == min(size) for edge in size]
    return [True, True, True]


def turn_allowed(body, kind, outers):
    item = body.item
    if item["shape"] == "soft":
        litres = Decimal(item["volume_l"]) * 10**9
        least = tenths(item.get("least_mm", 0), ROUND_CEILING)
        return min(body.size) >= least and math.prod(body.size) >= litres
    if item["shape"] == "sheet" and body.axis:  # rolled up in a tube: no tighter than it may be
        if kind != "tube" or body.axis != "z" or "least_roll_mm" not in item:
            return False
        length, width, thickness = up(item["size_mm"])
        least = tenths(item["least_roll_mm"], ROUND_CEILING)
        return body.size[0] == body.size[1] and any(
            body.size[2] == along and math.pi / 4 * (body.size[0] ** 2 - least**2) >= across * thickness
            for along, across in ((length, width), (width, length))
        )
    size = shape_size(item, outers)
    if item.get("turns") == "fixed":
        return body.size == size
    if item["shape"] in ("cylinder", "roll"):
        along = 0 if item["shape"] == "roll" else 2
        axis = "xyz".find(body.axis) if body.axis else -1
        if axis < 0:
            return False
        expected = [size[1]] * 3
        expected[axis] = size[along]
        if body.size != expected:
            return False
        stand = may_stand(item, size)
        return stand[along] if axis == 2 else any(stand[e] for e in range(3) if e != along)
    stand = may_stand(item, size)
    return any(
        stand[order[2]] and [size[edge] for edge in order] == body.size for order in permutations(range(3))
    )


def apart(a, b, gap, kind):
    """Enlarged by the gap the two do not overlap; coordinates doubled, so that middles are whole."""
    if any(a.end[k] + gap <= b.at[k] or b.end[k] + gap <= a.at[k] for k in range(3)):
        return True
    if a.is_circle(kind) and b.is_circle(kind):
        off = [a.at[k] + a.end[k] - b.at[k] - b.end[k] for k in (0, 1)]
        return off[0] ** 2 + off[1] ** 2 >= (a.size[0] + b.size[0] + 2 * gap) ** 2
    if b.is_circle(kind):
        a, b = b, a
    if not a.is_circle(kind):
        return False
    off = []
    for k in (0, 1):
        middle = a.at[k] + a.end[k]
        low, high = 2 * b.at[k] - gap, 2 * b.end[k] + gap
        off.append(max(low - middle, middle - high, 0))
    return off[0] ** 2 + off[1] ** 2 >= (a.size[0] + gap) ** 2


def in_box(bodies, outer, question, cut):
    inner = down(outer["inner_mm"])
    if cut is not None:
        if cut not in down(outer.get("cut_heights_mm", [])):
            yield "known outer", f"no cut height of {cut / 10} mm"
        inner[2] = cut
    lining, bed = up([question.get("lining_mm", 0), question.get("bed_mm", 0)])
    low = [lining, lining, lining + bed]
    for body in bodies:
        for k in range(3):
            out = max(low[k] - body.at[k], body.end[k] - inner[k] + lining)
            if out > 0:
                yield "inside", f"{body.name} is {out / 10} mm out along {'xyz'[k]}"


def in_sleeve(bodies, outer):
    inner = down(outer["inner_mm"])
    ease = up(outer.get("ease_mm", [0, 0]))
    for body in bodies:
        if min(body.at) < 0:
            yield "inside", f"{body.name} starts below zero"
    length, width, thick = (
        max(b.end[k] for b in bodies) - min(b.at[k] for b in bodies) for k in range(3)
    )
    over = max(thick + length - inner[0] + ease[0], thick + width - inner[1] + ease[1])
    if over > 0:
        yield "sleeve", f"{over / 10} mm too much around the contents"


def in_tube(bodies, outer):
    inner = down(outer["inner_mm"])
    diameter, length = inner[0], inner[-1]
    for body in bodies:
        if body.at[2] < 0 or body.end[2] > length:
            yield "inside", f"{body.name} is longer than the tube"
        if body.is_circle("tube"):
            off = [body.at[k] + body.end[k] - diameter for k in (0, 1)]
            room = diameter - body.size[0]
            held = room >= 0 and off[0] ** 2 + off[1] ** 2 <= room**2
        else:
            corner = [max(abs(2 * body.at[k] - diameter), abs(2 * body.end[k] - diameter)) for k in (0, 1)]
            held = corner[0] ** 2 + corner[1] ** 2 <= diameter**2
        if not held:
            yield "tube", f"{body.name} does not lie within the section"


def weight(items, outers):
    total = Decimal(0)
    for item in items:
        one = Decimal(item.get("weight_g", 0))
        if item["shape"] == "inside":
            one = Decimal(outers[item["packed_in"]].get("tare_g", 0)) + weight(item["items"], outers)
        total += one * item.get("count", 1)
    return total


def judge(question, items, outer, placements, cut=None):
    """Violations of one arrangement as (rule, words)."""
    outers = {o["id"]: o for o in question["outers"]}
    known = {item["id"]: item for item in items}
    wanted = {(i, c) for i, item in known.items() for c in range(1, item.get("count", 1) + 1)}
    bodies = []
    for placement in placements:
        copy_of = (placement["item"], placement["copy"])
        if copy_of not in wanted:
            yield "complete", f"{copy_of[0]} {copy_of[1]} is not asked for, or there twice"
            continue
        wanted.remove(copy_of)
        bodies.append(Body(known[placement["item"]], placement))
    for name, number in sorted(wanted):
        yield "complete", f"{name} {number} is missing"

    kind = outer["kind"]
    for body in bodies:
        if not turn_allowed(body, kind, outers):
            yield "turned", f"{body.name} may not stand like that"
        if body.item["shape"] == "inside":
            box = outers[body.item["packed_in"]]
            for rule, words in judge(question, body.item["items"], box, body.content):
                yield rule, f"in {body.name}: {words}"
    if kind == "tube":
        yield from in_tube(bodies, outer)
    elif kind in ("mailer", "padded-mailer"):
        if bodies:
            yield from in_sleeve(bodies, outer)
    else:
        yield from in_box(bodies, outer, question, cut)
    gap = tenths(question.get("gap_mm", 0), ROUND_CEILING)
    for a, b in combinations(bodies, 2):
        if not apart(a, b, gap, kind):
            yield "apart", f"{a.name} and {b.name}"
    if "max_load_g" in outer and weight(items, outers) > Decimal(outer["max_load_g"]):
        yield "load", "too heavy for it"


def judge_plan(plan):
    question, answer = plan["question"], plan["answer"]
    if answer["verdict"] != "fits":
        return
    outer = next((o for o in question["outers"] if o["id"] == answer["outer"]), None)
    if outer is None:
        yield "known outer", answer["outer"]
        return
    cut = answer.get("cut_height_mm")
    cut = None if cut is None else tenths(cut, ROUND_CEILING)
    yield from judge(question, question["items"], outer, answer["placements"], cut)


def check(document):
    plans = document["parcels"] if isinstance(document, dict) else document
    found = []
    for index, plan in enumerate(plans):
        number = plan.get("number", f"no. {index + 1}")
        found += [f"{number}: {rule}: {words}" for rule, words in judge_plan(plan)]
    return len(plans), found


def load(text):
    return json.loads(text, parse_float=Decimal)


SOUND = load(
    """{"parcels": [
 {"number": "cushioned",
  "question": {"gap_mm": 10, "lining_mm": 5, "bed_mm": 0.5,
    "items": [{"id": "ink", "count": 2, "shape": "block", "size_mm": [60, 60, 90.5], "turns": "upright", "weight_g": 210},
              {"id": "jar", "shape": "cylinder", "size_mm": [75, 95], "turns": "upright", "weight_g": 300}],
    "outers": [{"id": "K", "kind": "carton", "inner_mm": [225, 150, 106], "max_load_g": 720}]},
  "answer": {"verdict": "fits", "outer": "K", "placements": [
    {"item": "ink", "copy": 1, "at_mm": [5, 5, 5.5], "size_mm": [60, 60, 90.5]},
    {"item": "ink", "copy": 2, "at_mm": [5, 75, 5.5], "size_mm": [60, 60, 90.5]},
    {"item": "jar", "copy": 1, "at_mm": [75, 5, 5.5], "size_mm": [75, 75, 95], "axis": "z"}]}},
 {"number": "mailer",
  "question": {"items": [{"id": "book", "shape": "block", "size_mm": [200, 150, 20]}],
    "outers": [{"id": "M", "kind": "padded-mailer", "inner_mm": [225, 172, 0], "ease_mm": [5, 2]}]},
  "answer": {"verdict": "fits", "outer": "M", "placements": [
    {"item": "book", "copy": 1, "at_mm": [0, 0, 0], "size_mm": [200, 150, 20]}]}},
 {"number": "tube",
  "question": {"items": [{"id": "roll", "count": 2, "shape": "roll", "size_mm": [30, 400]}],
    "outers": [{"id": "T", "kind": "tube", "inner_mm": [60, 400]}]},
  "answer": {"verdict": "fits", "outer": "T", "placements": [
    {"item": "roll", "copy": 1, "at_mm": [0, 15, 0], "size_mm": [30, 30, 400], "axis": "z"},
    {"item": "roll", "copy": 2, "at_mm": [30, 15, 0], "size_mm": [30, 30, 400], "axis": "z"}]}},
 {"number": "gift",
  "question": {"items": [{"id": "set", "shape": "inside", "packed_in": "G",
                          "items": [{"id": "nib", "count": 2, "shape": "block", "size_mm": [40, 10, 8]}]}],
    "outers": [{"id": "C", "kind": "carton", "inner_mm": [94, 64, 34]},
               {"id": "G", "kind": "gift-box", "inner_mm": [80, 60, 8], "outer_mm": [94, 64, 34]}]},
  "answer": {"verdict": "fits", "outer": "C", "placements": [
    {"item": "set", "copy": 1, "at_mm": [0, 0, 0], "size_mm": [94, 64, 34], "content": [
      {"item": "nib", "copy": 1, "at_mm": [0, 0, 0], "size_mm": [40, 10, 8]},
      {"item": "nib", "copy": 2, "at_mm": [40, 0, 0], "size_mm": [40, 10, 8]}]}]}}
]}"""
)


def spoiled():
    """Copies of the sound plans with one thing wrong each, and the rule that must object."""

    def shift(parcel, path, axis, by):
        document = copy.deepcopy(SOUND)
        spot = document["parcels"][parcel]["answer"]["placements"]
        for step in path[:-1]:
            spot = spot[step]["content"]
        spot[path[-1]]["at_mm"][axis] += Decimal(by)
        return document

    yield "apart", shift(0, [1], 1, "-0.1")  # a gap of 9.9 mm
    yield "inside", shift(0, [1], 0, "-0.1")  # into the lining
    yield "inside", shift(0, [0], 2, "-0.1")  # into the bed
    yield "apart", shift(0, [2], 0, "-0.1")
    yield "tube", shift(2, [0], 1, "0.1")
    yield "apart", shift(2, [1], 0, "-0.1")
    yield "inside", shift(2, [0], 2, "0.1")
    yield "inside", shift(3, [0], 0, "0.1")
    yield "apart", shift(3, [0, 1], 0, "-0.1")
    yield "inside", shift(3, [0, 1], 0, "0.1")

    document = copy.deepcopy(SOUND)
    document["parcels"][1]["answer"]["placements"][0]["size_mm"][2] = Decimal("20.1")
    document["parcels"][1]["question"]["items"][0]["size_mm"][2] = Decimal("20.1")
    yield "sleeve", document
    document = copy.deepcopy(SOUND)
    document["parcels"][0]["answer"]["placements"][0]["size_mm"] = [60, Decimal("90.5"), 60]
    yield "turned", document
    document = copy.deepcopy(SOUND)
    del document["parcels"][0]["answer"]["placements"][0]
    yield "complete", document
    document = copy.deepcopy(SOUND)
    document["parcels"][0]["answer"]["placements"][0]["copy"] = 2
    yield "complete", document
    document = copy.deepcopy(SOUND)
    document["parcels"][0]["question"]["outers"][0]["max_load_g"] = Decimal("719.9")
    yield "load", document


def self_test():
    failures = [f"objects to a sound plan: {words}" for words in check(SOUND)[1]]
    for rule, document in spoiled():
        found = check(document)[1]
        if not any(f": {rule}: " in words for words in found):
            failures.append(f"misses a broken rule: {rule}; found {found}")
    return failures


def main(arguments):
    if arguments == ["--self-test"]:
        failures = self_test()
        print("\n".join(failures) or "self-test: every spoiled plan is objected to")
        return 1 if failures else 0
    if len(arguments) != 1:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        text = sys.stdin.read() if arguments[0] == "-" else open(arguments[0], encoding="utf-8").read()
        count, found = check(load(text))
    except (OSError, ValueError, KeyError, TypeError, ArithmeticError) as error:
        print(f"cannot be read: {error!r}", file=sys.stderr)
        return 4
    print("\n".join(found) or f"{count} plans, all sound")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
