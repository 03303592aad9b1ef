#include "core/store/schema.h"

namespace tierloam::store {

namespace {

// Days are civil days as ISO text, instants are UTC as ISO text: both sort, and both can be read without this program.
// Deleted entries keep their row and their place, so that a deletion can be undone after a restart.
// AUTOINCREMENT: an id that was told to somebody never names another entry.
const char* const entries = R"(
CREATE TABLE entries (
    id                 INTEGER PRIMARY KEY AUTOINCREMENT,
    day                TEXT NOT NULL CHECK (day IS date(day) AND day BETWEEN '1900-01-01' AND '2199-12-31'),
    minute             INTEGER CHECK (minute BETWEEN 0 AND 1439),
    position_in_day    INTEGER NOT NULL CHECK (position_in_day > 0),
    stack              TEXT NOT NULL,
    slot               INTEGER CHECK (slot >= 1),
    action             TEXT NOT NULL CHECK (length(action) > 0),
    amount             REAL CHECK (amount >= 0),
    unit               TEXT CHECK (unit IN ('g', 'kg', 'oz', 'lb', 'mL', 'L', 'cup', 'gal', 'floz', 'count')),
    item               TEXT NOT NULL,
    note               TEXT NOT NULL,
    area_m2            REAL CHECK (area_m2 > 0),
    height_cm          REAL CHECK (height_cm > 0),
    trays              INTEGER CHECK (trays > 0),
    sump_l             REAL CHECK (sump_l >= 0),
    spigot             TEXT CHECK (spigot IN ('open', 'shut')),
    place              TEXT CHECK (place IN ('indoors', 'garage', 'outdoors')),
    temp_c             REAL,
    stand              TEXT CHECK (stand IN ('legs', 'base', 'none')),
    stack_key          TEXT CHECK (length(stack_key) = 16),
    softening          TEXT CHECK (softening IN ('soft', 'mix', 'coffee', 'paper', 'cardboard', 'wood', 'coir', 'mineral')),
    moisture_pct       REAL CHECK (moisture_pct BETWEEN 0 AND 100),
    nitrogen_pct       REAL CHECK (nitrogen_pct BETWEEN 0 AND 100),
    carbon_to_nitrogen REAL CHECK (carbon_to_nitrogen >= 0),
    bulk_kg_m3         REAL CHECK (bulk_kg_m3 >= 0),
    water_held_kg_kg   REAL CHECK (water_held_kg_kg >= 0),
    counted            INTEGER CHECK (counted >= 0),
    side               TEXT CHECK (side IN ('left', 'right', 'front', 'back', 'all')),
    every_days         INTEGER CHECK (every_days >= 1),
    emptied            INTEGER CHECK (emptied IN (0, 1)),
    ec_ms_cm           REAL CHECK (ec_ms_cm >= 0),
    worms_put_back     INTEGER CHECK (worms_put_back >= 0),
    drained_l          REAL CHECK (drained_l >= 0),
    bin_c              REAL,
    air_c              REAL,
    humidity_pct       REAL CHECK (humidity_pct BETWEEN 0 AND 100),
    squeeze            INTEGER CHECK (squeeze BETWEEN 1 AND 5),
    ph                 REAL CHECK (ph BETWEEN 0 AND 14),
    depth_cm           REAL CHECK (depth_cm >= 0),
    bits_pct           REAL CHECK (bits_pct BETWEEN 0 AND 100),
    left_pct           REAL CHECK (left_pct BETWEEN 0 AND 100),
    worms_seen         TEXT CHECK (worms_seen IN ('few', 'some', 'many')),
    share_pct          REAL CHECK (share_pct BETWEEN 0 AND 100),
    volume_l           REAL CHECK (volume_l >= 0),
    tare_kg            REAL CHECK (tare_kg >= 0),
    lid                INTEGER CHECK (lid IN (0, 1)),
    move_to            TEXT,
    until_day          TEXT CHECK (until_day IS NULL OR until_day IS date(until_day)),
    import_id          INTEGER REFERENCES imports (id),
    created_at         TEXT NOT NULL,
    changed_at         TEXT NOT NULL,
    deleted_at         TEXT,
    CHECK ((amount IS NULL) = (unit IS NULL)),
    CHECK ((action = 'material') = (stack = ''))
) STRICT)";

const char* const imports = R"(
CREATE TABLE imports (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    name    TEXT NOT NULL,
    made_at TEXT NOT NULL,
    entries INTEGER NOT NULL CHECK (entries >= 0)
) STRICT)";

const char* const settings = R"(
CREATE TABLE settings (
    name       TEXT PRIMARY KEY NOT NULL CHECK (length(name) > 0),
    value      TEXT NOT NULL,
    changed_at TEXT NOT NULL
) STRICT, WITHOUT ROWID)";

// Pictures belong to an entry and are kept small: the long side at most 1600 px.
const char* const photos = R"(
CREATE TABLE photos (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    entry_id   INTEGER NOT NULL REFERENCES entries (id),
    media_type TEXT NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png')),
    width_px   INTEGER NOT NULL CHECK (width_px BETWEEN 1 AND 1600),
    height_px  INTEGER NOT NULL CHECK (height_px BETWEEN 1 AND 1600),
    caption    TEXT NOT NULL,
    bytes      BLOB NOT NULL CHECK (length(bytes) > 0),
    created_at TEXT NOT NULL,
    deleted_at TEXT
) STRICT)";

// Own materials that were entered by hand, beside those that the journal's `material` entries give.
const char* const materials = R"(
CREATE TABLE materials (
    id                 INTEGER PRIMARY KEY AUTOINCREMENT,
    name               TEXT NOT NULL CHECK (length(name) > 0),
    softening          TEXT NOT NULL CHECK (softening IN ('soft', 'mix', 'coffee', 'paper', 'cardboard', 'wood', 'coir', 'mineral')),
    moisture_pct       REAL NOT NULL CHECK (moisture_pct BETWEEN 0 AND 100),
    nitrogen_pct       REAL NOT NULL CHECK (nitrogen_pct BETWEEN 0 AND 100),
    carbon_to_nitrogen REAL CHECK (carbon_to_nitrogen >= 0),
    bulk_kg_m3         REAL NOT NULL CHECK (bulk_kg_m3 > 0),
    water_held_kg_kg   REAL NOT NULL CHECK (water_held_kg_kg >= 0),
    source             TEXT NOT NULL,
    entry_id           INTEGER REFERENCES entries (id),
    created_at         TEXT NOT NULL,
    changed_at         TEXT NOT NULL,
    deleted_at         TEXT
) STRICT)";

// Derived, rebuilt when program or digest differ, never migrated. batch 0 is the stack as a whole.
const char* const estimates = R"(
CREATE TABLE estimates (
    stack    TEXT NOT NULL,
    batch    INTEGER NOT NULL CHECK (batch >= 0),
    tray     INTEGER NOT NULL CHECK (tray >= 0),
    slot     INTEGER NOT NULL CHECK (slot >= 0),
    day      TEXT NOT NULL CHECK (day IS date(day)),
    quantity TEXT NOT NULL,
    p05      REAL NOT NULL,
    p50      REAL NOT NULL,
    p95      REAL NOT NULL,
    program  TEXT NOT NULL,
    digest   TEXT NOT NULL CHECK (length(digest) = 16),
    PRIMARY KEY (stack, batch, quantity, day),
    CHECK (p05 <= p50 AND p50 <= p95)
) STRICT, WITHOUT ROWID)";

// Readings of loggers, all of them. A series is one kind of reading in one stack as one import brought it; its readings keep the order of
// the file. Taking an import back marks its series. `second` is local civil time, counted from 1970-01-01 00:00: 100,000 readings stay small.
const char* const loggedSeries = R"(
CREATE TABLE logged_series (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    import_id  INTEGER NOT NULL REFERENCES imports (id),
    stack      TEXT NOT NULL CHECK (length(stack) > 0),
    kind       TEXT NOT NULL CHECK (kind IN ('bin', 'air', 'moisture', 'humidity')),
    readings   INTEGER NOT NULL CHECK (readings > 0),
    created_at TEXT NOT NULL,
    deleted_at TEXT
) STRICT)";

const char* const loggedReadings = R"(
CREATE TABLE logged_readings (
    series_id INTEGER NOT NULL REFERENCES logged_series (id),
    number    INTEGER NOT NULL CHECK (number > 0),
    second    INTEGER NOT NULL,
    value     REAL NOT NULL,
    PRIMARY KEY (series_id, number)
) STRICT, WITHOUT ROWID)";

// What pages show of them, summed up when they are written.
const char* const loggedDays = R"(
CREATE TABLE logged_days (
    series_id INTEGER NOT NULL REFERENCES logged_series (id),
    day       TEXT NOT NULL CHECK (day IS date(day)),
    readings  INTEGER NOT NULL CHECK (readings > 0),
    low       REAL NOT NULL,
    mean      REAL NOT NULL,
    high      REAL NOT NULL,
    PRIMARY KEY (series_id, day)
) STRICT, WITHOUT ROWID)";

// Of own materials: whether they belong into a bin, and why not. A word of reason is checked when it is read: there will be more of them.
const char* const materialWelcome = "ALTER TABLE entries ADD COLUMN welcome TEXT CHECK (welcome IN ('yes', 'little', 'no'))";
const char* const materialDoubt = "ALTER TABLE entries ADD COLUMN doubt TEXT CHECK (length(doubt) > 0)";

QString statement(const char* text) { return QString::fromLatin1(text); }

}

std::span<const std::vector<QString>> schemaSteps()
{
    static const std::vector<std::vector<QString>> steps{
        {statement(imports), statement(entries), statement("CREATE INDEX entries_in_order ON entries (day, position_in_day, id)"),
         statement("CREATE INDEX entries_of_import ON entries (import_id) WHERE import_id IS NOT NULL"), statement(settings)},
        {statement(photos), statement("CREATE INDEX photos_of_entry ON photos (entry_id)"), statement(materials),
         statement("CREATE UNIQUE INDEX materials_by_name ON materials (name COLLATE NOCASE) WHERE deleted_at IS NULL"),
         statement("CREATE INDEX materials_of_entry ON materials (entry_id) WHERE entry_id IS NOT NULL")},
        {statement(estimates), statement("CREATE INDEX estimates_by_program ON estimates (program, digest)")},
        {statement(loggedSeries), statement("CREATE INDEX logged_series_of_stack ON logged_series (stack)"), statement("CREATE INDEX logged_series_of_import ON logged_series (import_id)"),
         statement(loggedReadings), statement(loggedDays)},
        {statement(materialWelcome), statement(materialDoubt)},
    };
    return steps;
}

int newestSchema() { return static_cast<int>(schemaSteps().size()); }

}
