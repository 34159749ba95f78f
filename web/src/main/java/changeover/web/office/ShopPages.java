package changeover.web.office;

import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.words.FilledOn;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The business's own matters: what stands on its paper, and who works here. */
@Path("/{slug}/shop")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ShopPages {

    /** One who works here, as a row. */
    public record Worker(
            UUID person,
            String name,
            String email,
            String role,
            List<Ticket> tickets,
            boolean asked,
            String declined,
            String lastDay) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance shop(
                Frame frame, Said form, int version, List<Worker> people, boolean owner, boolean licenceDue);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @GET
    @Transactional
    public TemplateInstance shop() {
        BusinessProfile profile = businesses.profile();
        return page(Said.filled(fields(profile.facts())), profile.version());
    }

    @POST
    @RolesAllowed("owner")
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    BusinessProfile.Facts facts = facts(typed);
                    typed.understood();
                    BusinessProfile profile = businesses.profile();
                    new FilledOn(version).mustBe(profile.version());
                    profile.rewrite(facts);
                    return SaidOnce.at("/" + slug + "/shop", "kept");
                },
                refusals -> page(
                        Said.again(typed, refusals, frames.locale()),
                        businesses.profile().version()));
    }

    private TemplateInstance page(Said form, int version) {
        Frame frame = frames.of(Tab.SHOP);
        Map<UUID, List<Ticket>> tickets = people.tickets().stream().collect(Collectors.groupingBy(Ticket::personId));
        List<Worker> workers = people.all().stream()
                .map(member -> worker(member, tickets.getOrDefault(member.personId(), List.of()), frame))
                .toList();
        return Pages.shop(frame, form, version, workers, frame.role().equals("owner"), licenceDue());
    }

    /** In Quebec a contractor's licence stands on papers (Building Act, CQLR c. B-1.1, s. 57.1); none is written down yet. */
    private boolean licenceDue() {
        BusinessProfile.Facts facts = businesses.profile().facts();
        return facts.licence() == null && facts.inQuebec();
    }

    private static Worker worker(Membership member, List<Ticket> tickets, Frame frame) {
        return new Worker(
                member.personId(),
                member.name(),
                member.email(),
                member.role().code(),
                tickets,
                member.isAsked(),
                member.declinedOn().map(frame::inWords).orElse(""),
                member.untilDay().map(frame::inWords).orElse(""));
    }

    private static BusinessProfile.Facts facts(Typed typed) {
        return new BusinessProfile.Facts(
                typed.line("tagline", 80),
                typed.text("street", 200),
                typed.text("city", 100),
                typed.text("region", 10),
                typed.text("postal", 20),
                typed.text("country", 2),
                typed.line("phone", 40),
                typed.line("email", 200),
                typed.line("licence", 60),
                typed.line("gstNumber", 40),
                typed.line("qstNumber", 40),
                typed.ticked("smallSupplier"),
                typed.ticked("carryOpenSeason"),
                typed.whole("invoiceTermsDays", 0, 365),
                typed.oneOf("theme", Set.of("system", "day", "night")),
                typed.line("visitMinutesAtMost", 10) == null
                        ? null
                        : typed.whole(
                                "visitMinutesAtMost", BusinessProfile.LEAST_VISIT, BusinessProfile.LONGEST_VISIT));
    }

    private static Map<String, String> fields(BusinessProfile.Facts facts) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("tagline", orEmpty(facts.tagline()));
        fields.put("street", facts.street());
        fields.put("city", facts.city());
        fields.put("region", facts.region());
        fields.put("postal", facts.postal());
        fields.put("country", facts.country());
        fields.put("phone", orEmpty(facts.phone()));
        fields.put("email", orEmpty(facts.email()));
        fields.put("licence", orEmpty(facts.licence()));
        fields.put("gstNumber", orEmpty(facts.gstNumber()));
        fields.put("qstNumber", orEmpty(facts.qstNumber()));
        fields.put("smallSupplier", facts.smallSupplier() ? "yes" : "");
        fields.put("carryOpenSeason", facts.carryOpenSeason() ? "yes" : "");
        fields.put("invoiceTermsDays", String.valueOf(facts.invoiceTermsDays()));
        fields.put("theme", facts.theme());
        fields.put(
                "visitMinutesAtMost",
                facts.visitMinutesAtMost() == null ? "" : String.valueOf(facts.visitMinutesAtMost()));
        return fields;
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
