package changeover.web.office;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;

/** When a customer said something to the office: a day and a time on the business's clock, first shown as now. */
@ApplicationScoped
class SaidAt {

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    Instant read(Typed typed) {
        return typed.day("day")
                .atTime(typed.time("time"))
                .atZone(businesses.current().zone())
                .toInstant();
    }

    Said now() {
        return now(Map.of());
    }

    Said now(Map<String, String> others) {
        LocalDateTime now = today.time().truncatedTo(ChronoUnit.MINUTES);
        Map<String, String> fields = new HashMap<>(others);
        fields.put("day", now.toLocalDate().toString());
        fields.put("time", now.toLocalTime().toString());
        return Said.filled(fields);
    }
}
