#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads iCalendar files one after the other with a parser that is none of ours, as a calendar takes them in:
of one UID the later SEQUENCE wins. Prints one JSON line an event, times as seconds of universal time.

read_calendar.py icalendar|vobject FILE..."""
import json
import logging
import sys

library, files = sys.argv[1], sys.argv[2:]
try:
    module = __import__(library)
except ImportError:
    sys.exit(77)


class Complaints(logging.Handler):
    """Whatever a library has to say counts, but for one line: vobject asks a list of place names before it
    looks at the file's own zone, and logs that a zone with a rule of its own is not on that list."""

    def emit(self, record):
        if type(record.msg).__name__ != "UnknownTimeZoneError":
            raise ValueError(record.getMessage())


logging.getLogger().addHandler(Complaints())


def of_icalendar(text):
    calendar = module.Calendar.from_ical(text)
    for event in calendar.walk("VEVENT"):
        if event.errors:
            raise ValueError(event.errors)
        words = {k: str(event.get(k, "")) for k in ("UID", "SUMMARY", "LOCATION", "DESCRIPTION")}
        end = event.get("DTEND")
        yield words, int(event["SEQUENCE"]), event["DTSTART"].dt, end.dt if end else None


def of_vobject(text):
    calendar = module.readOne(text)
    calendar.validate(raiseException=True)
    for event in calendar.vevent_list:
        words = {k: getattr(event, k.lower()).value if hasattr(event, k.lower()) else ""
                 for k in ("UID", "SUMMARY", "LOCATION", "DESCRIPTION")}
        end = event.dtend.value if hasattr(event, "dtend") else None
        yield words, int(event.sequence.value), event.dtstart.value, end


kept = {}
for name in files:
    with open(name, encoding="utf-8", newline="") as file:
        text = file.read()
    for words, sequence, start, end in {"icalendar": of_icalendar, "vobject": of_vobject}[library](text):
        if words["UID"] in kept and kept[words["UID"]][1] > sequence:
            continue
        kept[words["UID"]] = (words, sequence, start, end)
for words, sequence, start, end in kept.values():
    print(json.dumps({"uid": words["UID"], "summary": words["SUMMARY"], "location": words["LOCATION"],
                      "description": words["DESCRIPTION"], "sequence": sequence, "from": start.timestamp(),
                      "to": end.timestamp() if end else start.timestamp()}))
