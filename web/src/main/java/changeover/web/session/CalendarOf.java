package changeover.web.session;

import java.util.UUID;

/** Whose visits a calendar shows. */
public sealed interface CalendarOf {

    /** @param person the technician's person id */
    record Technician(UUID person) implements CalendarOf {}

    record Household(UUID home) implements CalendarOf {}
}
