package changeover.web.session;

import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.Heat;
import changeover.scheduling.calls.NewCallers;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A call is taken, at the desk or on the phone: from the form as it opens to the call that is kept. */
@ApplicationScoped
public class CallTaking {

    @Inject
    Calls calls;

    @Inject
    NewCallers newcomers;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    /** The fields as the form opens: somebody rings now. */
    public Map<String, String> fresh(@Nullable UUID home) {
        LocalDateTime now = today.time().truncatedTo(ChronoUnit.MINUTES);
        var fields = new LinkedHashMap<String, String>();
        fields.put("made", UUID.randomUUID().toString());
        fields.put("day", now.toLocalDate().toString());
        fields.put("time", now.toLocalTime().toString());
        fields.put("heat", Heat.UNKNOWN.code());
        fields.put("language", businesses.current().language());
        fields.put("home", home == null ? "" : home.toString());
        return fields;
    }

    /** Reads the form; what is wrong is kept in {@code typed}, and a home that is nobody's here is not found. */
    public CallForm read(Typed typed) {
        CallForm form = CallForm.read(
                typed, businesses.current().zone(), businesses.current().currency());
        if (form.home() != null) {
            var _ = homes.get(form.home()).orElseThrow(NotFoundException::new);
        }
        return form;
    }

    /** Keeps the call, with its home where that is new; false when the same form was kept before. */
    public boolean take(CallForm form) {
        if (calls.find(form.made()).isPresent()) {
            return false;
        }
        UUID home = form.home();
        UUID where = home == null ? newcomers.enter(form.newcomer()) : home;
        var _ = calls.take(form.made(), form.said().at(where), today.now());
        return true;
    }
}
