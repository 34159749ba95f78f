package changeover.web.office;

import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallVersions;
import changeover.scheduling.calls.Calls;
import changeover.scheduling.calls.EmergencyNumber;
import changeover.scheduling.calls.Risk;
import changeover.web.session.CallChoices;
import changeover.web.session.CallForm;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was written down of a call is put right: the form as it stands, and why. What stood before stays and is shown. */
@Path("/{slug}/calls/{call}/correction")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CallCorrectionPages {

    /** @param number the emergency number where one is known */
    public record View(
            UUID id,
            String home,
            String rang,
            String number,
            List<CallChoices.Choice> lives,
            List<CallChoices.Choice> others,
            List<CallChoices.Choice> troubles) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance callcorrection(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Calls calls;

    @Inject
    CallVersions versions;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("call") UUID id) {
        Call call = found(id);
        return page(call, filled(versions.newest(call), frames.locale()));
    }

    @POST
    public Response correct(
            @PathParam("slug") String slug, @PathParam("call") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Call call = found(id);
                    Business business = businesses.current();
                    Call.Facts said =
                            CallForm.facts(typed, call.facts().rangAt(), business.zone(), business.currency());
                    String why = typed.text("correctionWhy", 500);
                    typed.understood();
                    calls.correct(id, said, why, current.person(), today.now());
                    return SaidOnce.at("/" + slug + "/calls/" + id, "kept");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private Call found(UUID id) {
        return calls.find(id).orElseThrow(NotFoundException::new);
    }

    private Said filled(Call.Facts facts, Locale locale) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        values.put("risks", facts.risks().stream().map(Risk::code).toList());
        values.put("told", List.of(facts.toldToLeave() ? "yes" : ""));
        values.put("caller", List.of(facts.caller()));
        values.put("phone", orNone(facts.phone()));
        values.put("trouble", List.of(facts.trouble().code()));
        values.put("heat", List.of(facts.heat().code()));
        values.put("words", List.of(facts.words()));
        Instant promised = facts.promisedBy();
        if (promised != null) {
            ZonedDateTime there = promised.atZone(businesses.current().zone());
            values.put("promiseDay", List.of(there.toLocalDate().toString()));
            values.put(
                    "promiseTime",
                    List.of(there.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString()));
        }
        values.put("cost", facts.told() == null ? List.of() : List.of(Written.of(facts.told(), locale)));
        values.put("toldWords", orNone(facts.toldWords()));
        return new Said(values, Map.of(), List.of());
    }

    private static List<String> orNone(@Nullable String said) {
        return said == null ? List.of() : List.of(said);
    }

    private TemplateInstance page(Call call, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        Business business = businesses.current();
        return Pages.callcorrection(
                frame,
                new View(
                        call.id(),
                        homes.get(call.homeId())
                                .orElseThrow(NotFoundException::new)
                                .line(),
                        CallRows.inWords(call.facts().rangAt(), frame, business.zone()),
                        EmergencyNumber.in(business.country()).orElse(""),
                        CallChoices.risks(true, frame),
                        CallChoices.risks(false, frame),
                        CallChoices.troubles(frame)),
                form);
    }
}
