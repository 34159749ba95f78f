package changeover.web.office;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.reviews.KnownRule;
import changeover.scheduling.reviews.ReviewKind;
import changeover.scheduling.reviews.ReviewRule;
import changeover.scheduling.reviews.ReviewRules;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Which closures wait until somebody looks them over: the owner's rules. */
@Path("/{slug}/shop/reviews")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ReviewRulePages {

    private static final Set<String> LEVELS = Set.of("recommended", "urgent", "do_not_use");

    /**
     * @param level code and words of the least gravity, or empty
     * @param person whose; empty for everybody's
     * @param ended the day, or empty
     */
    public record Line(UUID id, String kind, String person, String level, int first, String from, String ended) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance reviewrules(
                Frame frame, List<Line> rules, List<OrderChoices.Choice> people, String made, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    ReviewRules rules;

    @Inject
    People people;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(UUID.randomUUID().toString(), Said.blank());
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    UUID made = typed.id("made");
                    ReviewRule rule = rule(typed);
                    rules.add(made, rule);
                    return SaidOnce.at("/" + slug + "/shop/reviews", "kept");
                },
                refusals ->
                        page(String.valueOf(fields.getFirst("made")), Said.again(typed, refusals, frames.locale())));
    }

    private static ReviewRule rule(Typed typed) {
        ReviewKind kind = ReviewKind.of(typed.oneOf("kind", ReviewKind.codes()));
        UUID person = typed.idOrNone("person");
        @Nullable
        FindingLevel level = kind == ReviewKind.SEVERITY ? FindingLevel.ofCode(typed.oneOf("level", LEVELS)) : null;
        int first = kind == ReviewKind.FIRST ? typed.whole("first", 1, ReviewRule.MOST) : 0;
        LocalDate from = typed.day("from");
        typed.understood();
        return new ReviewRule(kind, person, level, first, from);
    }

    @POST
    @Path("{rule}/ending")
    @RolesAllowed("owner")
    public Response end(
            @PathParam("slug") String slug, @PathParam("rule") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = rules.find(id).orElseThrow(NotFoundException::new);
                    rules.end(id);
                    return SaidOnce.at("/" + slug + "/shop/reviews", "kept");
                },
                refusals -> page(UUID.randomUUID().toString(), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(String made, Said typed) {
        Frame frame = frames.of(Tab.SHOP);
        Said form = typed.over(Map.of(
                "kind", "technician",
                "level", "urgent",
                "first", "10",
                "from", frame.today().toString()));
        return Pages.reviewrules(
                frame,
                rules.all().stream().map(rule -> line(rule, frame)).toList(),
                people.all().stream()
                        .filter(member -> member.worksOn(frame.today()))
                        .map(ReviewRulePages::choice)
                        .toList(),
                made,
                form);
    }

    private static OrderChoices.Choice choice(Membership member) {
        return new OrderChoices.Choice(member.personId().toString(), member.name());
    }

    private static Line line(KnownRule rule, Frame frame) {
        FindingLevel level = rule.rule().level();
        LocalDate ended = rule.ended();
        return new Line(
                rule.id(),
                rule.rule().kind().code(),
                rule.person(),
                level == null ? "" : level.wording().in(frame.locale()),
                rule.rule().first(),
                frame.brief(rule.rule().from()),
                ended == null ? "" : frame.brief(ended));
    }
}
