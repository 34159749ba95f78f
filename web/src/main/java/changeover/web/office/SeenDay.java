package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.VisitLists;
import jakarta.ws.rs.core.MultivaluedMap;

/** A visit's day is moved only from where the person saw it; who comes second sees both. */
record SeenDay(String text) {

    static SeenDay of(VisitLists.Row row) {
        return new SeenDay(row.day() == null ? "" : row.day() + " " + row.starts() + " " + row.technicianId());
    }

    /** @throws changeover.contracts.words.Refused when the form was filled on another day, hour or technician */
    void mustStand(MultivaluedMap<String, String> fields) {
        String seen = fields.getFirst("seen");
        if (seen != null && !seen.equals(text)) {
            throw Refusal.of("changed-meanwhile").thrown();
        }
    }
}
