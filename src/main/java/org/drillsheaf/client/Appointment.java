package org.drillsheaf.client;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/** The next appointment, as agreed. */
public record Appointment(LocalDate date, Optional<LocalTime> time) {}
