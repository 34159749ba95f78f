package changeover.web.office;

import changeover.billing.pricing.LabourTerms;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
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
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How minutes become billed hours: the step they are counted by, and the least of a visit, each from a day on. */
@Path("/{slug}/shop/prices/labour")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class LabourPages {

    public record Row(String from, String words, boolean inForce) {}

    public record Step(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance labour(Frame frame, List<Row> rows, List<Step> steps, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @GET
    @Transactional
    public TemplateInstance page() {
        LabourTerms held = prices.book().termsOn(today.day());
        return page(Said.filled(Map.of(
                "step", String.valueOf(held.step()),
                "minimum", String.valueOf(held.minimum()),
                "from", today.day().toString())));
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Set<String> steps =
                            LabourTerms.STEPS.stream().map(String::valueOf).collect(Collectors.toSet());
                    int step = Integer.parseInt(typed.oneOf("step", steps));
                    int minimum = typed.whole("minimum", 0, LabourTerms.LARGEST_MINIMUM);
                    LocalDate from = typed.day("from");
                    typed.understood();
                    rules.set(new LabourTerms(from, step, minimum));
                    return SaidOnce.at("/" + slug + "/shop/prices/labour", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        PriceBook book = prices.book();
        LabourTerms held = book.termsOn(today.day());
        List<Row> rows = book.terms().stream()
                .sorted(Comparator.comparing(LabourTerms::from).reversed())
                .map(terms -> new Row(frame.brief(terms.from()), counting(terms, frame.locale()), terms.equals(held)))
                .toList();
        List<Step> steps = LabourTerms.STEPS.stream()
                .map(step -> new Step(String.valueOf(step), step(step).in(frame.locale())))
                .toList();
        return Pages.labour(frame, rows, steps, form);
    }

    /** In a sentence: by which step, and the least of a visit. */
    static String counting(LabourTerms terms, Locale locale) {
        Wording step = step(terms.step());
        Wording least = terms.minimum() == 0
                ? new Wording("no minimum", "sans minimum")
                : new Wording(
                        "a visit that no plan promised counts " + terms.minimum() + " minutes at least",
                        "une visite qu’aucune formule ne promet compte au moins " + terms.minimum() + " minutes");
        return new Wording(
                        "Minutes are counted up to " + step.en() + "; " + least.en() + ".",
                        "Les minutes sont comptées " + step.fr() + "; " + least.fr() + ".")
                .in(locale);
    }

    private static Wording step(int minutes) {
        return switch (minutes) {
            case 15 -> new Wording("the next quarter hour", "jusqu’au quart d’heure suivant");
            case 30 -> new Wording("the next half hour", "jusqu’à la demi-heure suivante");
            case 60 -> new Wording("the next whole hour", "jusqu’à l’heure suivante");
            default ->
                new Wording("the next " + minutes + " minutes", "par tranches entières de " + minutes + " minutes");
        };
    }
}
