-- Erasing a client removes programs one by one; each removal asks whether a document shows it.
CREATE INDEX document_by_program ON document (program_key);
