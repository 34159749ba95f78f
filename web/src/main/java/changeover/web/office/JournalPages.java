package changeover.web.office;

import changeover.billing.ledger.AccountCodes;
import changeover.billing.ledger.AccountNames;
import changeover.billing.ledger.Journal;
import changeover.billing.ledger.JournalEntry;
import changeover.billing.ledger.JournalFile;
import changeover.billing.ledger.Period;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.session.CsvAnswer;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The journal of a period for the accountant: what each account moved, its postings, and the file. */
@Path("/{slug}/money/journal")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class JournalPages {

    /** What a role moved; {@code list} is the address of its postings. */
    public record Moved(String words, String account, String debit, String credit, String list) {}

    public record View(
            String period, List<Moved> moved, String debit, String credit, int entries, int missing, String file) {}

    public record Posting(
            String day, String document, @Nullable UUID invoice, String words, String debit, String credit) {}

    public record Postings(
            String words, String period, String back, List<Posting> rows, Leaf leaf, String debit, String credit) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance journal(Frame frame, View view, Said form);

        static native TemplateInstance postings(Frame frame, Postings list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Journal journal;

    @Inject
    AccountCodes codes;

    @Inject
    AccountNames names;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public Response journal(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        PeriodAsked period = PeriodAsked.of(typed, today.day());
        if (!period.refusals().isEmpty()) {
            return desk.refuse(
                    period.refusals(), refusals -> page(period, Said.again(typed, refusals, frames.locale())));
        }
        return Response.ok(page(period, Said.filled(period.fields()))).build();
    }

    @GET
    @Path("journal.csv")
    @Produces("text/csv")
    @Transactional
    public Response file(@Context UriInfo asked) {
        Period period = PeriodAsked.understood(asked, today.day()).period();
        return CsvAnswer.of(JournalFile.of(journal.of(period), codes.all(), frames.locale()), "journal", period);
    }

    @GET
    @Path("postings")
    @Transactional
    public TemplateInstance postings(@Context UriInfo asked, @Nullable @QueryParam("role") String role) {
        PeriodAsked period = PeriodAsked.understood(asked, today.day());
        if (role == null || !codes.roles().contains(role)) {
            throw new NotFoundException();
        }
        Frame frame = frames.of(Tab.MONEY);
        Money nought = Money.zero(businesses.current().currency());
        Money debit = nought;
        Money credit = nought;
        List<Posting> rows = new ArrayList<>();
        for (JournalEntry entry : journal.of(period.period())) {
            for (JournalEntry.Posting one : entry.postings()) {
                if (one.role().equals(role)) {
                    debit = debit.plus(one.debit());
                    credit = credit.plus(one.credit());
                    rows.add(new Posting(
                            frame.brief(entry.day()),
                            entry.document(),
                            entry.invoiceId(),
                            entry.words().in(frame.locale()),
                            some(one.debit(), frame),
                            some(one.credit(), frame)));
                }
            }
        }
        Leaf leaf = Leaf.of(asked, rows.size());
        return Pages.postings(
                frame,
                new Postings(
                        names.now().of(role).in(frame.locale()),
                        PeriodAsked.inWords(period.period(), frame),
                        period.query(),
                        leaf.shown(rows),
                        leaf,
                        debit.format(frame.locale()),
                        credit.format(frame.locale())));
    }

    private TemplateInstance page(PeriodAsked asked, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        List<JournalEntry> entries = journal.of(asked.period());
        List<Journal.Moved> moved = Journal.moved(entries);
        Map<String, String> known = codes.all();
        AccountNames.Names said = names.now();
        Money nought = Money.zero(businesses.current().currency());
        return Pages.journal(
                frame,
                new View(
                        PeriodAsked.inWords(asked.period(), frame),
                        moved.stream()
                                .map(one -> new Moved(
                                        said.of(one.role()).in(frame.locale()),
                                        known.getOrDefault(one.role(), ""),
                                        some(one.debit(), frame),
                                        some(one.credit(), frame),
                                        frame.at("money/journal/postings?") + asked.query() + "&role="
                                                + URLEncoder.encode(one.role(), StandardCharsets.UTF_8)))
                                .toList(),
                        moved.stream()
                                .map(Journal.Moved::debit)
                                .reduce(nought, Money::plus)
                                .format(frame.locale()),
                        moved.stream()
                                .map(Journal.Moved::credit)
                                .reduce(nought, Money::plus)
                                .format(frame.locale()),
                        entries.size(),
                        (int) moved.stream()
                                .filter(one -> !known.containsKey(one.role()))
                                .count(),
                        frame.at("money/journal/journal.csv?") + asked.query()),
                form);
    }

    private static String some(Money money, Frame frame) {
        return money.isZero() ? "" : money.format(frame.locale());
    }
}
