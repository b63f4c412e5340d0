-- The record, for H2 (in its PostgreSQL mode) and PostgreSQL alike. Written once; later changes go into a V2, V3 …
-- Keys are random UUIDs, so that a copy from one engine to the other keeps them. Nothing in the audit can name a person:
-- it holds keys and field names, never an id that was made from a name, never a value.

-- One row. Every writing transaction raises the number just before it commits, so the audit has no gaps, is in the order
-- of the commits, and serves as the feed of changes. chain = SHA-256 of the chain before and the entry.
CREATE TABLE ledger (
    only_row    INTEGER     NOT NULL PRIMARY KEY CHECK (only_row = 1),
    last_number BIGINT      NOT NULL,
    chain       VARCHAR(64) NOT NULL,
    store_key   UUID        NOT NULL
);

CREATE TABLE audit (
    entry_number BIGINT                   NOT NULL PRIMARY KEY,
    entry_time   TIMESTAMP WITH TIME ZONE NOT NULL,
    who          VARCHAR(200)             NOT NULL,
    deed         VARCHAR(20)              NOT NULL,
    kind         VARCHAR(20)              NOT NULL,
    record_key   VARCHAR(80)              NOT NULL,
    part         VARCHAR(40)              NOT NULL,
    part_version BIGINT                   NOT NULL,
    fields       VARCHAR                  NOT NULL,
    chain        VARCHAR(64)              NOT NULL
);
CREATE INDEX audit_by_record ON audit (record_key, entry_number);

CREATE TABLE client (
    client_key  UUID         NOT NULL PRIMARY KEY,
    client_id   VARCHAR(80)  NOT NULL UNIQUE,
    full_name   VARCHAR(200) NOT NULL,
    coach       VARCHAR(200) NOT NULL,
    born        VARCHAR(10)  NOT NULL,
    last_visit  DATE
);

-- What is edited apart: the block about the client, the conditions, each visit. The newest version …
CREATE TABLE client_part (
    client_key   UUID                     NOT NULL REFERENCES client (client_key),
    part         VARCHAR(40)              NOT NULL,
    part_version BIGINT                   NOT NULL,
    body         VARCHAR,
    saved_by     VARCHAR(200)             NOT NULL,
    saved_at     TIMESTAMP WITH TIME ZONE NOT NULL,
    PRIMARY KEY (client_key, part)
);
-- … and every version there was; no body: the part was removed.
CREATE TABLE client_part_version (
    client_key   UUID                     NOT NULL REFERENCES client (client_key),
    part         VARCHAR(40)              NOT NULL,
    part_version BIGINT                   NOT NULL,
    body         VARCHAR,
    saved_by     VARCHAR(200)             NOT NULL,
    saved_at     TIMESTAMP WITH TIME ZONE NOT NULL,
    PRIMARY KEY (client_key, part, part_version)
);

-- A save that came second: kept until somebody has looked at both.
CREATE TABLE clash (
    clash_key    UUID                     NOT NULL PRIMARY KEY,
    client_key   UUID                     NOT NULL REFERENCES client (client_key),
    part         VARCHAR(40)              NOT NULL,
    base_version BIGINT                   NOT NULL,
    body         VARCHAR,
    saved_by     VARCHAR(200)             NOT NULL,
    saved_at     TIMESTAMP WITH TIME ZONE NOT NULL
);
CREATE INDEX clash_by_client ON clash (client_key);

CREATE TABLE reading (
    client_key      UUID                     NOT NULL REFERENCES client (client_key),
    visit_date      DATE                     NOT NULL,
    reading_version INTEGER                  NOT NULL,
    body            VARCHAR                  NOT NULL,
    saved_by        VARCHAR(200)             NOT NULL,
    saved_at        TIMESTAMP WITH TIME ZONE NOT NULL,
    PRIMARY KEY (client_key, visit_date, reading_version)
);

-- Every edition of a drill that was ever in the catalogue, known by the hash of its content.
CREATE TABLE drill_revision (
    drill       VARCHAR(100)             NOT NULL,
    sha256      VARCHAR(64)              NOT NULL,
    revision    INTEGER                  NOT NULL,
    origin      VARCHAR(20)              NOT NULL,
    body        VARCHAR                  NOT NULL,
    saved_by    VARCHAR(200)             NOT NULL,
    saved_at    TIMESTAMP WITH TIME ZONE NOT NULL,
    PRIMARY KEY (drill, sha256)
);
CREATE TABLE drill_current (
    drill        VARCHAR(100) NOT NULL PRIMARY KEY,
    sha256       VARCHAR(64)  NOT NULL,
    part_version BIGINT       NOT NULL,
    names        VARCHAR      NOT NULL,
    FOREIGN KEY (drill, sha256) REFERENCES drill_revision (drill, sha256)
);

CREATE TABLE program (
    program_key     UUID                     NOT NULL PRIMARY KEY,
    client_key      UUID                     NOT NULL REFERENCES client (client_key),
    visit_date      DATE                     NOT NULL,
    program_version INTEGER                  NOT NULL,
    body            VARCHAR                  NOT NULL,
    saved_by        VARCHAR(200)             NOT NULL,
    saved_at        TIMESTAMP WITH TIME ZONE NOT NULL,
    signed_by       VARCHAR(200),
    signed_at       TIMESTAMP WITH TIME ZONE,
    UNIQUE (client_key, visit_date, program_version)
);
CREATE TABLE program_drill (
    program_key UUID         NOT NULL REFERENCES program (program_key),
    drill       VARCHAR(100) NOT NULL,
    sha256      VARCHAR(64)  NOT NULL,
    PRIMARY KEY (program_key, drill),
    FOREIGN KEY (drill, sha256) REFERENCES drill_revision (drill, sha256)
);

-- Bytes by their hash: a vocabulary that a hundred handouts were frozen with lies here once.
CREATE TABLE content (
    sha256     VARCHAR(64) NOT NULL PRIMARY KEY,
    byte_count BIGINT      NOT NULL
);
CREATE TABLE content_chunk (
    sha256 VARCHAR(64) NOT NULL REFERENCES content (sha256),
    chunk  INTEGER     NOT NULL,
    bytes  BYTEA       NOT NULL,
    PRIMARY KEY (sha256, chunk)
);

-- What was handed out: the PDF, and the frozen inputs that it was drawn from.
CREATE TABLE document (
    document_key    UUID                     NOT NULL PRIMARY KEY,
    client_key      UUID                     NOT NULL REFERENCES client (client_key),
    program_key     UUID                     REFERENCES program (program_key),
    kind            VARCHAR(40)              NOT NULL,
    document_date   DATE                     NOT NULL,
    language        VARCHAR(20)              NOT NULL,
    paper           VARCHAR(20)              NOT NULL,
    drawn_by        VARCHAR(40)              NOT NULL,
    pdf_sha256      VARCHAR(64)              NOT NULL REFERENCES content (sha256),
    handed_out_by   VARCHAR(200)             NOT NULL,
    handed_out_at   TIMESTAMP WITH TIME ZONE NOT NULL
);
CREATE INDEX document_by_client ON document (client_key, handed_out_at);
CREATE INDEX document_by_pdf ON document (pdf_sha256);
CREATE TABLE document_input (
    document_key UUID         NOT NULL REFERENCES document (document_key),
    input_name   VARCHAR(200) NOT NULL,
    sha256       VARCHAR(64)  NOT NULL REFERENCES content (sha256),
    PRIMARY KEY (document_key, input_name)
);
CREATE INDEX document_input_by_content ON document_input (sha256);

CREATE TABLE coach (
    coach_name   VARCHAR(200) NOT NULL PRIMARY KEY,
    is_lead      BOOLEAN      NOT NULL,
    is_active    BOOLEAN      NOT NULL,
    part_version BIGINT       NOT NULL
);

CREATE TABLE setting (
    setting_name VARCHAR(100) NOT NULL PRIMARY KEY,
    body         VARCHAR      NOT NULL,
    part_version BIGINT       NOT NULL
);

-- Which clients were erased, by keys that name nobody; a restore repeats them.
CREATE TABLE erasure (
    client_key UUID                     NOT NULL PRIMARY KEY,
    erased_by  VARCHAR(200)             NOT NULL,
    erased_at  TIMESTAMP WITH TIME ZONE NOT NULL
);
