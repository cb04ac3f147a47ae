-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 1 of the season file: one table per record, one column per field.
-- Words, days (YYYY-MM-DD), times (YYYY-MM-DDTHH:MM) and colours (#rrggbb) are TEXT,
-- money is in the currency's smallest unit, NULL is blank and never nought.

CREATE TABLE "settings" (
    "id" INTEGER PRIMARY KEY,
    "season_name" TEXT NOT NULL,
    "first_day" TEXT NOT NULL,
    "last_day" TEXT NOT NULL,
    "place_name" TEXT NOT NULL,
    "latitude" REAL NOT NULL,
    "longitude" REAL NOT NULL,
    "zone_rule" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "tax_rate" REAL NOT NULL,
    "tax_rate_date" TEXT,
    "paper" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "spare_rule" TEXT NOT NULL,
    "spare_percent" REAL NOT NULL,
    "spare_confidence" REAL NOT NULL,
    "store_celsius" REAL NOT NULL,
    "bench_celsius" REAL NOT NULL,
    "van_celsius" REAL NOT NULL,
    "venue_celsius" REAL NOT NULL,
    "heat_limit_celsius" REAL NOT NULL,
    "work_from" INTEGER NOT NULL,
    "work_to" INTEGER NOT NULL,
    "recut_mm" INTEGER NOT NULL,
    "bucket_hours" REAL NOT NULL,
    "cool_buckets" INTEGER,
    "labour_rate" INTEGER NOT NULL,
    "travel_rate" INTEGER NOT NULL,
    "lifting_limit_kg" REAL NOT NULL,
    "deposit_share" REAL NOT NULL,
    "balance_days" INTEGER NOT NULL,
    "quote_days" INTEGER NOT NULL,
    "terms" TEXT NOT NULL,
    "promise_level" TEXT NOT NULL
) STRICT;

CREATE TABLE "month_normal" (
    "id" INTEGER PRIMARY KEY,
    "month" INTEGER NOT NULL,
    "min_celsius" REAL NOT NULL,
    "max_celsius" REAL NOT NULL
) STRICT;

CREATE TABLE "rate" (
    "id" INTEGER PRIMARY KEY,
    "work" TEXT NOT NULL,
    "minutes" REAL NOT NULL,
    "basis" TEXT NOT NULL,
    "note" TEXT NOT NULL
) STRICT;

CREATE TABLE "accepted_finding" (
    "id" INTEGER PRIMARY KEY,
    "finding" TEXT NOT NULL,
    "facts" TEXT NOT NULL,
    "accepted_on" TEXT NOT NULL
) STRICT;

CREATE TABLE "plant" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "botanical_name" TEXT NOT NULL,
    "focal" INTEGER NOT NULL CHECK ("focal" IN (0, 1)),
    "spike" INTEGER NOT NULL CHECK ("spike" IN (0, 1)),
    "filler" INTEGER NOT NULL CHECK ("filler" IN (0, 1)),
    "foliage" INTEGER NOT NULL CHECK ("foliage" IN (0, 1)),
    "airy" INTEGER NOT NULL CHECK ("airy" IN (0, 1)),
    "trailing" INTEGER NOT NULL CHECK ("trailing" IN (0, 1)),
    "colour_1" TEXT,
    "colour_2" TEXT,
    "colour_3" TEXT,
    "shape" TEXT NOT NULL,
    "stem_length_min" INTEGER,
    "stem_length_max" INTEGER,
    "stem_diameter_mm" REAL,
    "head_diameter_mm" REAL,
    "stage_to_cut" TEXT NOT NULL,
    "opening_hours" REAL,
    "vase_life_min_days" REAL,
    "vase_life_max_days" REAL,
    "q10" REAL,
    "storage_days" REAL,
    "storage_celsius" REAL,
    "conditioning_hours_min" REAL,
    "conditioning_hours_max" REAL,
    "conditioning" TEXT NOT NULL,
    "uptake_ml_per_day" REAL,
    "grows_on_mm_per_day" REAL,
    "ethylene_sensitive" INTEGER CHECK ("ethylene_sensitive" IN (0, 1)),
    "hold_days" REAL,
    "habit" TEXT NOT NULL,
    "regrowth_days" INTEGER,
    "stems_per_plant" REAL,
    "bunch" INTEGER,
    "cutting_stems_per_hour" REAL,
    "method" TEXT NOT NULL,
    "loss_percent" REAL,
    "base_celsius" REAL,
    "ceiling_celsius" REAL,
    "heat_share" REAL,
    "days_to_flower" REAL,
    "heat_units_to_flower" REAL,
    "germination_percent" REAL,
    "weeks_under_cover" REAL,
    "spacing" INTEGER,
    "price_per_stem" INTEGER,
    "cost_per_stem" INTEGER,
    "notes" TEXT NOT NULL
) STRICT;

CREATE TABLE "plant_fact" (
    "id" INTEGER PRIMARY KEY,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "fact" TEXT NOT NULL,
    "basis" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "remark" TEXT NOT NULL
) STRICT;

CREATE TABLE "plant_hazard" (
    "id" INTEGER PRIMARY KEY,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "basis" TEXT NOT NULL,
    "source" TEXT NOT NULL
) STRICT;

CREATE TABLE "patch" (
    "id" INTEGER PRIMARY KEY,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "label" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "plants" INTEGER,
    "bed_length" INTEGER,
    "expected_stems" INTEGER,
    "first_cut" TEXT,
    "peak_cut" TEXT,
    "last_cut" TEXT,
    "hard_cut" TEXT,
    "under_cover" INTEGER NOT NULL CHECK ("under_cover" IN (0, 1)),
    "way_there" TEXT NOT NULL,
    "notes" TEXT NOT NULL
) STRICT;

CREATE TABLE "walk" (
    "id" INTEGER PRIMARY KEY,
    "date" TEXT NOT NULL,
    "patch" INTEGER NOT NULL REFERENCES "patch" ("id") DEFERRABLE INITIALLY DEFERRED,
    "ready_now" INTEGER,
    "within_three_days" INTEGER,
    "within_week" INTEGER,
    "remark" TEXT NOT NULL
) STRICT;

CREATE TABLE "weather" (
    "id" INTEGER PRIMARY KEY,
    "date" TEXT NOT NULL,
    "min_celsius" REAL NOT NULL,
    "max_celsius" REAL NOT NULL,
    "kind" TEXT NOT NULL
) STRICT;

CREATE TABLE "past_cut" (
    "id" INTEGER PRIMARY KEY,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "patch" INTEGER REFERENCES "patch" ("id") DEFERRABLE INITIALLY DEFERRED,
    "first_cut" TEXT NOT NULL,
    "last_cut" TEXT,
    "stems" INTEGER
) STRICT;

CREATE TABLE "stock_lot" (
    "id" INTEGER PRIMARY KEY,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "stems" INTEGER NOT NULL,
    "origin" TEXT NOT NULL,
    "ready_from" TEXT NOT NULL,
    "use_by" TEXT,
    "unit_cost" INTEGER,
    "supplier" TEXT NOT NULL,
    "home_grown" INTEGER NOT NULL CHECK ("home_grown" IN (0, 1))
) STRICT;

CREATE TABLE "container" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "profile" TEXT NOT NULL,
    "inner_rim" INTEGER NOT NULL,
    "inner_body" INTEGER,
    "inner_base" INTEGER,
    "inner_length" INTEGER,
    "inner_depth" INTEGER NOT NULL,
    "outer_height" INTEGER,
    "outer_diameter" INTEGER,
    "outer_neck" INTEGER,
    "neck_height" INTEGER,
    "measured_volume" INTEGER,
    "empty_weight" INTEGER,
    "owned" INTEGER,
    "cost" INTEGER,
    "replacement_price" INTEGER,
    "returnable" INTEGER NOT NULL CHECK ("returnable" IN (0, 1)),
    "notes" TEXT NOT NULL
) STRICT;

CREATE TABLE "ribbon" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "colour" TEXT,
    "width" INTEGER NOT NULL,
    "cost_per_metre" INTEGER
) STRICT;

CREATE TABLE "ribbon_length" (
    "id" INTEGER PRIMARY KEY,
    "ribbon" INTEGER NOT NULL REFERENCES "ribbon" ("id") DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT NOT NULL,
    "length" INTEGER NOT NULL,
    "dye_lot" TEXT NOT NULL
) STRICT;

CREATE TABLE "ribbon_mix" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "not_two_alike_side_by_side" INTEGER NOT NULL CHECK ("not_two_alike_side_by_side" IN (0, 1))
) STRICT;

CREATE TABLE "ribbon_mix_part" (
    "id" INTEGER PRIMARY KEY,
    "mix" INTEGER NOT NULL REFERENCES "ribbon_mix" ("id") DEFERRABLE INITIALLY DEFERRED,
    "ribbon" INTEGER NOT NULL REFERENCES "ribbon" ("id") DEFERRABLE INITIALLY DEFERRED,
    "share" REAL NOT NULL
) STRICT;

CREATE TABLE "sundry" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "on_hand" REAL,
    "cost" INTEGER,
    "rule" TEXT NOT NULL,
    "amount" REAL NOT NULL
) STRICT;

CREATE TABLE "holder" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "inner_length" INTEGER,
    "inner_width" INTEGER,
    "inner_height" INTEGER,
    "tare" INTEGER,
    "owned" INTEGER,
    "cells" INTEGER,
    "stems_per_cell" INTEGER,
    "short_stems" INTEGER,
    "middle_stems" INTEGER,
    "long_stems" INTEGER,
    "water" INTEGER
) STRICT;

CREATE TABLE "vehicle" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "floor_length" INTEGER,
    "floor_width" INTEGER,
    "plate_load_kg" REAL
) STRICT;

CREATE TABLE "design" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "container" INTEGER REFERENCES "container" ("id") DEFERRABLE INITIALLY DEFERRED,
    "loose" INTEGER NOT NULL CHECK ("loose" IN (0, 1)),
    "lift" INTEGER NOT NULL,
    "height_low" INTEGER NOT NULL,
    "height_middle" INTEGER NOT NULL,
    "height_tall" INTEGER NOT NULL,
    "stems_below_tie" INTEGER,
    "spread" INTEGER,
    "water_share" REAL NOT NULL,
    "ribbon_mix" INTEGER REFERENCES "ribbon_mix" ("id") DEFERRABLE INITIALLY DEFERRED,
    "wraps" INTEGER NOT NULL,
    "overlap" INTEGER NOT NULL,
    "finish" TEXT NOT NULL,
    "loop" INTEGER NOT NULL,
    "loops" INTEGER NOT NULL,
    "tail" INTEGER NOT NULL,
    "trim" INTEGER NOT NULL,
    "minutes" REAL,
    "minutes_basis" TEXT NOT NULL,
    "price" INTEGER,
    "making_notes" TEXT NOT NULL,
    "picture" TEXT NOT NULL,
    "trial_count" INTEGER,
    "trial_date" TEXT,
    "trial_note" TEXT NOT NULL
) STRICT;

CREATE TABLE "slot" (
    "id" INTEGER PRIMARY KEY,
    "design" INTEGER NOT NULL REFERENCES "design" ("id") DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "purpose" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "may_vary_by" INTEGER NOT NULL,
    "tier" TEXT NOT NULL,
    "clump" INTEGER NOT NULL CHECK ("clump" IN (0, 1))
) STRICT;

CREATE TABLE "slot_plant" (
    "id" INTEGER PRIMARY KEY,
    "slot" INTEGER NOT NULL REFERENCES "slot" ("id") DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "share" REAL
) STRICT;

CREATE TABLE "design_sundry" (
    "id" INTEGER PRIMARY KEY,
    "design" INTEGER NOT NULL REFERENCES "design" ("id") DEFERRABLE INITIALLY DEFERRED,
    "sundry" INTEGER NOT NULL REFERENCES "sundry" ("id") DEFERRABLE INITIALLY DEFERRED,
    "amount" REAL NOT NULL
) STRICT;

CREATE TABLE "client" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "contact" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "consent_to_keep" INTEGER NOT NULL CHECK ("consent_to_keep" IN (0, 1))
) STRICT;

CREATE TABLE "venue" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "door" TEXT NOT NULL,
    "key_holder" TEXT NOT NULL,
    "travel" INTEGER,
    "distance_km" REAL,
    "in_from" INTEGER,
    "out_by" INTEGER,
    "water" TEXT NOT NULL,
    "stairs" TEXT NOT NULL,
    "parking" TEXT NOT NULL,
    "fixing_rule" TEXT NOT NULL,
    "flame_rule" TEXT NOT NULL,
    "who_moves" TEXT NOT NULL,
    "notes" TEXT NOT NULL
) STRICT;

CREATE TABLE "venue_table" (
    "id" INTEGER PRIMARY KEY,
    "venue" INTEGER NOT NULL REFERENCES "venue" ("id") DEFERRABLE INITIALLY DEFERRED,
    "label" TEXT NOT NULL,
    "shape" TEXT NOT NULL,
    "length" INTEGER NOT NULL,
    "width" INTEGER,
    "covers" INTEGER NOT NULL,
    "how_many" INTEGER NOT NULL
) STRICT;

CREATE TABLE "booking" (
    "id" INTEGER PRIMARY KEY,
    "title" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "client" INTEGER REFERENCES "client" ("id") DEFERRABLE INITIALLY DEFERRED,
    "venue" INTEGER REFERENCES "venue" ("id") DEFERRABLE INITIALLY DEFERRED,
    "event_start" TEXT NOT NULL,
    "event_end" TEXT NOT NULL,
    "look_good_until" TEXT,
    "make_from" TEXT,
    "standing" TEXT NOT NULL,
    "held_until" TEXT,
    "wishes" TEXT NOT NULL,
    "must_have" TEXT NOT NULL,
    "must_not" TEXT NOT NULL,
    "allergies" TEXT NOT NULL,
    "scent" TEXT NOT NULL,
    "animals" TEXT NOT NULL,
    "candles" TEXT NOT NULL,
    "budget" INTEGER,
    "gift_share" REAL NOT NULL,
    "notes" TEXT NOT NULL
) STRICT;

CREATE TABLE "booking_colour" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "colour" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "share" REAL
) STRICT;

CREATE TABLE "agreed_swap" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "position" INTEGER NOT NULL,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "stand_in" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE "question" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "text" TEXT NOT NULL,
    "needed_by" TEXT,
    "answer" TEXT NOT NULL
) STRICT;

CREATE TABLE "drop" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "place" TEXT NOT NULL,
    "time" TEXT NOT NULL,
    "received_by" TEXT NOT NULL,
    "cleared_at" TEXT,
    "cleared_by" TEXT NOT NULL
) STRICT;

CREATE TABLE "line" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "design" INTEGER NOT NULL REFERENCES "design" ("id") DEFERRABLE INITIALLY DEFERRED,
    "pieces" INTEGER NOT NULL,
    "spare_pieces" INTEGER NOT NULL,
    "drop" INTEGER REFERENCES "drop" ("id") DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT NOT NULL,
    "unit_price" INTEGER
) STRICT;

CREATE TABLE "placement" (
    "id" INTEGER PRIMARY KEY,
    "line" INTEGER NOT NULL REFERENCES "line" ("id") DEFERRABLE INITIALLY DEFERRED,
    "table" INTEGER NOT NULL REFERENCES "venue_table" ("id") DEFERRABLE INITIALLY DEFERRED,
    "per_table" INTEGER NOT NULL
) STRICT;

CREATE TABLE "payment" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "date" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "amount" INTEGER NOT NULL,
    "note" TEXT NOT NULL
) STRICT;

CREATE TABLE "sent_version" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT NOT NULL,
    "date" TEXT NOT NULL,
    "text" TEXT NOT NULL
) STRICT;

CREATE TABLE "helper" (
    "id" INTEGER PRIMARY KEY,
    "name" TEXT NOT NULL,
    "speed" TEXT NOT NULL,
    "rate" INTEGER,
    "can_cut" INTEGER NOT NULL CHECK ("can_cut" IN (0, 1)),
    "can_condition" INTEGER NOT NULL CHECK ("can_condition" IN (0, 1)),
    "can_make" INTEGER NOT NULL CHECK ("can_make" IN (0, 1)),
    "can_drive" INTEGER NOT NULL CHECK ("can_drive" IN (0, 1)),
    "note" TEXT NOT NULL
) STRICT;

CREATE TABLE "helper_hours" (
    "id" INTEGER PRIMARY KEY,
    "helper" INTEGER NOT NULL REFERENCES "helper" ("id") DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL
) STRICT;

CREATE TABLE "busy_hours" (
    "id" INTEGER PRIMARY KEY,
    "helper" INTEGER REFERENCES "helper" ("id") DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "repeats" TEXT NOT NULL,
    "repeats_until" TEXT
) STRICT;

CREATE TABLE "round" (
    "id" INTEGER PRIMARY KEY,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    "note" TEXT NOT NULL
) STRICT;

CREATE TABLE "round_booking" (
    "id" INTEGER PRIMARY KEY,
    "round" INTEGER NOT NULL REFERENCES "round" ("id") DEFERRABLE INITIALLY DEFERRED,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED
) STRICT;

CREATE TABLE "tally" (
    "id" INTEGER PRIMARY KEY,
    "round" INTEGER NOT NULL REFERENCES "round" ("id") DEFERRABLE INITIALLY DEFERRED,
    "patch" INTEGER NOT NULL REFERENCES "patch" ("id") DEFERRABLE INITIALLY DEFERRED,
    "cut" INTEGER,
    "thrown_away" INTEGER
) STRICT;

CREATE TABLE "made" (
    "id" INTEGER PRIMARY KEY,
    "line" INTEGER NOT NULL REFERENCES "line" ("id") DEFERRABLE INITIALLY DEFERRED,
    "pieces" INTEGER NOT NULL,
    "minutes" INTEGER,
    "by_whom" TEXT NOT NULL
) STRICT;

CREATE TABLE "return" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "container" INTEGER NOT NULL REFERENCES "container" ("id") DEFERRABLE INITIALLY DEFERRED,
    "out" INTEGER NOT NULL,
    "back" INTEGER,
    "broken" INTEGER
) STRICT;

CREATE TABLE "job_note" (
    "id" INTEGER PRIMARY KEY,
    "booking" INTEGER NOT NULL REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "hours_cutting" REAL,
    "hours_conditioning" REAL,
    "hours_making" REAL,
    "hours_on_the_road" REAL,
    "drooped" TEXT NOT NULL,
    "next_time" TEXT NOT NULL
) STRICT;

CREATE TABLE "job_note_plant" (
    "id" INTEGER PRIMARY KEY,
    "note" INTEGER NOT NULL REFERENCES "job_note" ("id") DEFERRABLE INITIALLY DEFERRED,
    "plant" INTEGER NOT NULL REFERENCES "plant" ("id") DEFERRABLE INITIALLY DEFERRED,
    "used" INTEGER,
    "left" INTEGER
) STRICT;

CREATE TABLE "step_mark" (
    "id" INTEGER PRIMARY KEY,
    "step" TEXT NOT NULL,
    "booking" INTEGER REFERENCES "booking" ("id") DEFERRABLE INITIALLY DEFERRED,
    "line" INTEGER REFERENCES "line" ("id") DEFERRABLE INITIALLY DEFERRED,
    "drop" INTEGER REFERENCES "drop" ("id") DEFERRABLE INITIALLY DEFERRED,
    "day" TEXT,
    "number" INTEGER NOT NULL,
    "pinned" TEXT,
    "by_helper" INTEGER NOT NULL CHECK ("by_helper" IN (0, 1)),
    "helper" INTEGER REFERENCES "helper" ("id") DEFERRABLE INITIALLY DEFERRED,
    "done" TEXT,
    "minutes" INTEGER,
    "note" TEXT NOT NULL
) STRICT;
