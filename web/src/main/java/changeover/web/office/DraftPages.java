package changeover.web.office;

import changeover.billing.documents.Words;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.DraftByHand;
import changeover.billing.invoices.DraftChange;
import changeover.billing.invoices.DraftsByHand;
import changeover.billing.tax.ContractForm;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
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
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A draft is changed by hand: its lines, a line more, its terms. */
@Path("/{slug}/money/invoices/{id}/draft")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class DraftPages {

    /** @param now what stands there now, under what was typed */
    public record Row(
            String heading,
            String words,
            String french,
            String quantity,
            String price,
            String off,
            String work,
            String form,
            List<Choice> works,
            String now,
            String unit,
            boolean unpriced,
            boolean included,
            boolean byHand,
            boolean visitChanged) {}

    public record Choice(String code, String words) {}

    /** @param alsoFrench its paper is French first, whatever its reader asked for */
    public record Sheet(
            UUID id,
            int version,
            boolean credit,
            boolean french,
            boolean alsoFrench,
            boolean visitChanged,
            List<Row> rows,
            List<String> takenOff,
            List<String> lost,
            List<Choice> units,
            List<Choice> works,
            List<Choice> forms) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance draft(Frame frame, Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Businesses businesses;

    @Inject
    DraftsByHand drafts;

    @Inject
    InvoicePages pages;

    @GET
    @Transactional
    public TemplateInstance draft(@PathParam("id") UUID id) {
        DraftByHand draft = drafts.of(id).orElseThrow(NotFoundException::new);
        return page(draft, DraftForm.filled(draft, frames.locale()));
    }

    @POST
    public Response change(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    DraftByHand draft = drafts.of(id).orElseThrow(() -> pages.gone(id));
                    int version = typed.whole("version", 0, Integer.MAX_VALUE);
                    DraftChange change = DraftForm.read(typed, draft);
                    typed.understood();
                    drafts.change(id, new FilledOn(version), change);
                    return SaidOnce.at("/" + slug + "/money/invoices/" + id, "kept");
                },
                refusals -> again(id, typed, refusals));
    }

    /** A draft that was issued or discarded meanwhile is shown as it is now. */
    private TemplateInstance again(UUID id, Typed typed, List<Refusal> refusals) {
        Optional<DraftByHand> draft = drafts.of(id);
        return draft.isEmpty()
                ? pages.page(id, pages.sentences(refusals))
                : page(draft.get(), Said.again(typed, refusals, frames.locale()));
    }

    private TemplateInstance page(DraftByHand draft, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Locale locale = frame.locale();
        Words paper = Words.in(locale);
        boolean french = draft.language().getLanguage().equals("fr");
        return Pages.draft(
                frame,
                new Sheet(
                        draft.id(),
                        draft.version(),
                        draft.kind() == DocumentKind.CREDIT,
                        french,
                        !french && businesses.profile().facts().inQuebec(),
                        draft.visitChanged(),
                        draft.lines().stream()
                                .map(line -> row(line, locale, paper))
                                .toList(),
                        draft.takenOff().stream()
                                .map(words -> words.in(draft.language()))
                                .toList(),
                        DraftForm.lost(form, draft),
                        DraftsByHand.UNITS.stream()
                                .map(code -> new Choice(code, paper.unit(code)))
                                .toList(),
                        works(null, locale),
                        Arrays.stream(ContractForm.values())
                                .map(one -> new Choice(one.code(), one.wording().in(locale)))
                                .toList()),
                form);
    }

    private static List<Choice> works(DraftByHand.@Nullable Line line, Locale locale) {
        return DraftForm.works(line).stream()
                .map(one -> new Choice(one.code(), one.wording().in(locale)))
                .toList();
    }

    private static Row row(DraftByHand.Line line, Locale locale, Words paper) {
        String quantity = Written.of(line.quantity(), locale);
        return new Row(
                line.position() + ". " + line.words(),
                DraftForm.field("words", line),
                DraftForm.field("french", line),
                DraftForm.field("quantity", line),
                DraftForm.field("price", line),
                DraftForm.field("off", line),
                DraftForm.field("work", line),
                DraftForm.field("form", line),
                works(line, locale),
                line.unitPrice() == null
                        ? quantity
                        : quantity + " × " + line.unitPrice().format(locale),
                paper.unit(line.unit()),
                line.unitPrice() == null,
                line.included(),
                line.byHand(),
                line.visitChanged());
    }
}
