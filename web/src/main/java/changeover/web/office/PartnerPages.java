package changeover.web.office;

import changeover.contracts.tenants.Today;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.partners.Partner;
import changeover.scheduling.partners.PartnerPaper;
import changeover.scheduling.partners.Partners;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Licensed partners: their trade, their papers with the last days, the visits that went to them. */
@Path("/{slug}/shop/partners")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PartnerPages {

    private static final int SHOWN = 50;

    /**
     * A partner in a line.
     *
     * @param state bare without a licence, over, soon, or empty
     * @param last the last day on which all their papers hold
     */
    public record Line(UUID id, String name, String trade, String reached, String state, String last) {}

    /** @param state over, soon, or empty */
    public record Paper(
            UUID id, UUID partner, String partnerName, String kind, String number, String last, String state) {}

    /** @param state made, late, or empty while it is to be made */
    public record Given(UUID visit, String home, String day, String price, String partner, String state) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance partners(Frame frame, List<Line> lines, Said form);

        static native TemplateInstance partner(
                Frame frame, Line partner, List<Paper> papers, List<Given> visits, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Partners partners;

    @Inject
    GivenVisits given;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("trade", "electrical")));
    }

    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var facts = new Partners.Facts(
                            typed.text("name", 120),
                            typed.oneOf("trade", Set.copyOf(Partner.TRADES)),
                            typed.line("phone", 40),
                            typed.line("email", 200));
                    typed.understood();
                    UUID id = partners.add(facts);
                    return SaidOnce.at("/" + slug + "/shop/partners/" + id, "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("{partner}")
    @Transactional
    public TemplateInstance one(@PathParam("partner") UUID partner) {
        return page(partner, Said.filled(Map.of("kind", PartnerPaper.LICENCE, "remindDays", "60")));
    }

    @POST
    @Path("{partner}/papers")
    public Response addPaper(
            @PathParam("slug") String slug, @PathParam("partner") UUID partner, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = known(partner);
                    var paper = new Partners.Paper(
                            typed.oneOf("kind", Set.copyOf(PartnerPaper.KINDS)),
                            typed.line("number", 60),
                            typed.day("expires"),
                            typed.whole("remindDays", 1, 365));
                    typed.understood();
                    partners.addPaper(partner, paper);
                    return SaidOnce.at("/" + slug + "/shop/partners/" + partner, "kept");
                },
                refusals -> page(partner, Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("{partner}/papers/{held}/end")
    public Response putAway(
            @PathParam("slug") String slug, @PathParam("partner") UUID partner, @PathParam("held") UUID held) {
        return desk.answer(
                () -> {
                    if (known(partner).papers().stream()
                            .noneMatch(paper -> paper.id().equals(held))) {
                        throw new NotFoundException();
                    }
                    partners.putAway(held, today.day());
                    return SaidOnce.at("/" + slug + "/shop/partners/" + partner, "kept");
                },
                _ -> page(partner, Said.blank()));
    }

    @POST
    @Path("{partner}/end")
    public Response end(@PathParam("slug") String slug, @PathParam("partner") UUID partner) {
        return desk.answer(
                () -> {
                    var _ = known(partner);
                    partners.end(partner, today.day());
                    return SaidOnce.at("/" + slug + "/shop/partners", "kept");
                },
                _ -> page(Said.blank()));
    }

    private Partner known(UUID partner) {
        return partners.find(partner).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.partners(
                frame, partners.all().stream().map(one -> line(one, frame)).toList(), form);
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Partner partner = known(id);
        return Pages.partner(
                frame,
                line(partner, frame),
                partner.papers().stream().map(one -> paper(one, frame)).toList(),
                given.ofPartner(id, SHOWN).stream()
                        .map(one -> given(one, frame))
                        .toList(),
                form);
    }

    private static Line line(Partner one, Frame frame) {
        LocalDate day = frame.today();
        boolean bare = one.papers().stream().noneMatch(paper -> paper.kind().equals(PartnerPaper.LICENCE));
        boolean over = one.papers().stream().anyMatch(paper -> paper.isOver(day));
        boolean soon = one.papers().stream().anyMatch(paper -> paper.isSpokenOf(day));
        String phone = one.phone() == null ? "" : one.phone();
        String email = one.email() == null ? "" : one.email();
        return new Line(
                one.id(),
                one.name(),
                one.trade(),
                phone.isEmpty() || email.isEmpty() ? phone + email : phone + ", " + email,
                bare ? "bare" : over ? "over" : soon ? "soon" : "",
                one.papers().stream()
                        .map(PartnerPaper::expiresOn)
                        .min(Comparator.naturalOrder())
                        .map(frame::brief)
                        .orElse(""));
    }

    static Paper paper(PartnerPaper one, Frame frame) {
        String number = one.number();
        return new Paper(
                one.id(),
                one.partner(),
                one.partnerName(),
                one.kind(),
                number == null ? "" : number,
                frame.brief(one.expiresOn()),
                one.isOver(frame.today()) ? "over" : one.isSpokenOf(frame.today()) ? "soon" : "");
    }

    static Given given(GivenVisit one, Frame frame) {
        return new Given(
                one.visit(),
                one.home(),
                frame.brief(one.day()),
                one.price().format(frame.locale()),
                one.partnerName(),
                one.done() ? "made" : one.isLate(frame.today()) ? "late" : "");
    }
}
