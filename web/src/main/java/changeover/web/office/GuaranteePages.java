package changeover.web.office;

import changeover.billing.documents.Places;
import changeover.billing.documents.Words;
import changeover.billing.tax.TaxQuestion;
import changeover.billing.warranties.Guarantee;
import changeover.billing.warranties.Guarantees;
import changeover.billing.warranties.LegalNote;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

/** Who answers for a part and its work before the plan and the price are asked: the owner's months, by day. */
@Path("/{slug}/shop/guarantees")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class GuaranteePages {

    private static final int MOST = 480;

    /** @param of a kind of work, a part or a place, in words; {@code kind} of machine in words, or empty */
    public record Row(String of, String kind, String from, int months, String source) {}

    public record View(
            List<Row> ours,
            List<Row> parts,
            List<Row> law,
            List<Row> notes,
            List<OrderChoices.Choice> carried,
            List<OrderChoices.Choice> kinds) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance guarantees(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Guarantees guarantees;

    @Inject
    OrderChoices choices;

    @Inject
    Parts parts;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(blank()));
    }

    private Map<String, String> blank() {
        String day = today.day().toString();
        return Map.of("ourFrom", day, "partFrom", day, "lawFrom", day, "region", region());
    }

    @POST
    @Path("ours")
    @RolesAllowed("owner")
    public Response ours(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        return keep(slug, "our", fields, typed -> {
            String work = typed.oneOf("work", Guarantees.WORKS);
            var from = typed.day("ourFrom");
            int months = typed.whole("ourMonths", 0, MOST);
            typed.understood();
            guarantees.ours(work, from, months);
        });
    }

    @POST
    @Path("parts")
    @RolesAllowed("owner")
    public Response part(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        return keep(slug, "part", fields, typed -> {
            String part = typed.text("part", 60);
            var from = typed.day("partFrom");
            int months = typed.whole("partMonths", 0, MOST);
            String basis = typed.text("basis", 300);
            typed.understood();
            guarantees.part(part, from, months, basis);
        });
    }

    @POST
    @Path("law")
    @RolesAllowed("owner")
    public Response law(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        return keep(slug, "law", fields, typed -> {
            String region = typed.text("region", 10);
            String kind = Objects.requireNonNullElse(typed.line("kind", 60), "");
            var from = typed.day("lawFrom");
            int months = typed.whole("lawMonths", 0, MOST);
            String source = typed.text("source", 300);
            typed.understood();
            guarantees.law(region, kind, from, months, source);
        });
    }

    private Response keep(String slug, String of, MultivaluedMap<String, String> fields, Consumer<Typed> doing) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    doing.accept(typed);
                    return SaidOnce.at("/" + slug + "/shop/guarantees", "kept");
                },
                refusals -> {
                    Map<String, String> filled = new HashMap<>(blank());
                    Said again = Said.again(
                            typed,
                            refusals.stream()
                                    .map(one -> "months".equals(one.field()) ? one.at(of + "Months") : one)
                                    .toList(),
                            frames.locale());
                    return page(again.over(filled));
                });
    }

    private String region() {
        Business business = businesses.current();
        return TaxQuestion.region(business.country(), business.region());
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Catalogue trade = catalogue.catalogue();
        return Pages.guarantees(
                frame,
                new View(
                        rows(guarantees.ours(), frame, trade),
                        guarantees.ofParts().stream()
                                .map(one -> row(one, name(one.of(), frame), frame, trade))
                                .toList(),
                        guarantees.ofLaw().stream()
                                .map(one -> row(one, Places.region(Words.in(frame.locale()), one.of()), frame, trade))
                                .toList(),
                        LegalNote.of(region()).stream()
                                .map(note -> new Row(
                                        note.words().in(frame.locale()),
                                        "",
                                        frame.brief(note.from()),
                                        0,
                                        note.source()))
                                .toList(),
                        choices.parts(frame.locale()),
                        trade.kinds().stream()
                                .map(kind -> new OrderChoices.Choice(
                                        kind.code(), kind.wording().in(frame.locale())))
                                .sorted(Comparator.comparing(OrderChoices.Choice::words))
                                .toList()),
                form);
    }

    private String name(String part, Frame frame) {
        return parts.everKnown(part)
                .map(KnownPart::name)
                .map(name -> name.in(frame.locale()))
                .orElse(part);
    }

    private static List<Row> rows(List<Guarantee> all, Frame frame, Catalogue trade) {
        return all.stream().map(one -> row(one, one.of(), frame, trade)).toList();
    }

    private static Row row(Guarantee one, String of, Frame frame, Catalogue trade) {
        String kind = one.kind().isEmpty()
                ? ""
                : trade.findKind(one.kind())
                        .map(Kind::wording)
                        .map(wording -> wording.in(frame.locale()))
                        .orElse(one.kind());
        return new Row(of, kind, frame.brief(one.from()), one.months(), one.source());
    }
}
