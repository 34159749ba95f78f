package changeover.web.office;

import changeover.billing.runs.Foreseeable;
import changeover.billing.runs.Foreseeable.Kind;
import changeover.billing.runs.RunPreview;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusals;
import changeover.web.session.Frame;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a run would do, in words: sums by kind, what is odd, what stays, and the documents themselves.
 *
 * @param totals of all, tax included
 * @param nothing drafts with nothing to charge, which no run issues
 * @param of the kind whose documents are listed; empty for all
 */
public record RunLook(
        String day,
        int drafts,
        String totals,
        List<OfKind> kinds,
        Documents odd,
        Stays stay,
        Documents letters,
        int nothing,
        String of,
        Documents documents) {

    public record OfKind(String kind, int drafts, String totals) {}

    /** A draft with its amount, tax included. */
    public record Document(
            UUID draft,
            UUID customerId,
            String customer,
            String street,
            String what,
            int more,
            String amount,
            List<Oddity> odd) {}

    /** @param usual empty where no amount is compared */
    public record Oddity(String why, String usual) {}

    public record Documents(List<Document> rows, Leaf leaf) {}

    public record Stay(UUID draft, String customer, String why) {}

    public record Stays(List<Stay> rows, Leaf leaf) {}

    /** @param kind of the documents to list, or null for all */
    static RunLook of(RunPreview preview, @Nullable Kind kind, MultivaluedMap<String, String> asked, Frame frame) {
        List<RunPreview.Odd> stay = preview.refused();
        Leaf staying = Leaf.of(frame.at("money/runs"), asked, "stay", stay.size());
        return new RunLook(
                preview.day().toString(),
                preview.drafts(),
                together(preview.totals(), frame),
                preview.kinds().stream()
                        .map(one -> new OfKind(one.kind().code(), one.drafts(), together(one.totals(), frame)))
                        .toList(),
                documents(preview.odd(), asked, "odd", frame),
                new Stays(
                        staying.shown(stay).stream()
                                .map(one -> new Stay(
                                        one.draft(), one.customer(), Refusals.sentence(one.why(), frame.locale())))
                                .toList(),
                        staying),
                documents(preview.withoutMail(), asked, "letters", frame),
                preview.nothing(),
                kind == null ? "" : kind.code(),
                documents(preview.of(kind), asked, "page", frame));
    }

    private static Documents documents(
            List<RunPreview.Planned> all, MultivaluedMap<String, String> asked, String name, Frame frame) {
        Leaf leaf = Leaf.of(frame.at("money/runs"), asked, name, all.size());
        return new Documents(
                leaf.shown(all).stream().map(one -> document(one, frame)).toList(), leaf);
    }

    private static Document document(RunPreview.Planned one, Frame frame) {
        Foreseeable draft = one.draft();
        return new Document(
                draft.id(),
                draft.customerId(),
                draft.customer(),
                draft.street(),
                draft.what().in(frame.locale()),
                draft.more(),
                one.amount().format(frame.locale()),
                draft.odd().stream().map(odd -> odd(odd, frame)).toList());
    }

    private static Oddity odd(Foreseeable.Oddity odd, Frame frame) {
        Money usual = odd.usual();
        return new Oddity(odd.why().code(), usual == null ? "" : usual.format(frame.locale()));
    }

    static String together(List<Money> totals, Frame frame) {
        return totals.stream().map(one -> one.format(frame.locale())).collect(Collectors.joining("; "));
    }
}
