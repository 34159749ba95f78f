package changeover.web.api;

import changeover.billing.bank.BankBooking;
import changeover.billing.bank.BankLine;
import changeover.billing.bank.BankLines;
import changeover.billing.bank.Proposal;
import changeover.billing.bank.Proposals;
import changeover.billing.payments.OpenByAge;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Lines of the bank with what each may be; a yes books what was shown and nothing else. */
@Path("/api/v1/{slug}/bank-lines")
@RolesAllowed({"owner", "office"})
public class BankLinesApi {

    /**
     * What a line may be. {@code shown} is sent back with the yes.
     *
     * @param customer null where several payments of one way and day are the line
     * @param payments those that were noted before, or came back
     */
    public record ProposalDocument(
            String what,
            @Nullable UUID customer,
            String name,
            List<UUID> payments,
            List<UUID> invoices,
            List<String> why,
            boolean sure,
            String shown) {}

    /** A line of the bank; {@code waits} until somebody said what it is. */
    public record LineDocument(
            UUID id,
            String bank,
            LocalDate day,
            Amount amount,
            String words,
            @Nullable String reference,
            boolean waits,
            @Nullable ProposalDocument proposal) {}

    @Inject
    BankLines lines;

    @Inject
    Proposals proposals;

    @Inject
    BankBooking booking;

    @Inject
    OpenByAge open;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Those that wait, the oldest first: {@code count} of them, at most 500, after the first {@code skip}. */
    @GET
    @Transactional
    public List<LineDocument> waiting(
            @QueryParam("skip") @DefaultValue("0") int skip, @QueryParam("count") @DefaultValue("200") int count) {
        int first = Math.clamp(skip, 0, 1_000_000);
        int most = Math.clamp(count, 1, 500);
        return proposals.waiting(first + most).entrySet().stream()
                .skip(first)
                .map(one -> document(one.getKey(), true, one.getValue()))
                .toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public LineDocument one(@PathParam("id") UUID id) {
        BankLine line = lines.one(id).orElseThrow(NotFoundException::new);
        boolean waits = lines.waits(id);
        return document(line, waits, waits ? proposals.of(line) : Optional.empty());
    }

    /** A yes to the proposal: {@code shown} as the line said it. */
    @POST
    @Path("{id}/booking")
    public Response book(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return said(operation, "booking ", id, body, "shown", 10_000, shown -> booking.accept(id, shown));
    }

    /**
     * Split over documents: {@code parts} ({@code invoice}, and {@code amount} where it is not all that is open of it). What they
     * leave of the line is kept for the first one's customer.
     */
    @POST
    @Path("{id}/split")
    public Response split(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "split " + id + body, () -> {
            BankLine line = lines.one(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            List<BankBooking.Share> shares = shares(asked, line);
            asked.nothingElse().understood();
            booking.split(id, BankBooking.withTheRest(line, shares));
            return Once.Answer.done(one(id));
        });
    }

    private List<BankBooking.Share> shares(Asked asked, BankLine line) {
        Map<UUID, OpenByAge.Item> items = new HashMap<>();
        open.on(today.day(), null).forEach(item -> items.put(item.id(), item));
        List<BankBooking.Share> shares = new ArrayList<>();
        Set<UUID> named = new HashSet<>();
        for (Asked part : asked.each("parts")) {
            UUID invoice = part.id("invoice");
            Money amount = part.value("amount") == null
                    ? null
                    : part.money("amount", line.amount().currency());
            part.nothingElse();
            part.understood();
            OpenByAge.Item item = items.get(invoice);
            if (item == null) {
                throw Refusal.of("bank.not-open").at("parts").thrown();
            }
            if (!named.add(invoice)) {
                throw Refusal.of("bank.part-twice").at("parts").thrown();
            }
            shares.add(
                    new BankBooking.Share(item.customerId(), List.of(invoice), amount == null ? item.open() : amount));
        }
        if (shares.isEmpty()) {
            throw Refusal.of("bank.no-part").at("parts").thrown();
        }
        return shares;
    }

    /** No customer's money: {@code why}. */
    @POST
    @Path("{id}/dismissal")
    public Response dismiss(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return said(operation, "dismissal ", id, body, "why", 300, why -> booking.dismiss(id, why));
    }

    /** Takes back what was said of it: {@code why}. */
    @POST
    @Path("{id}/taking-back")
    public Response takeBack(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return said(operation, "taking-back ", id, body, "why", 300, why -> {
            if (why.length() < 3) {
                throw Refusal.of("payment.why-missing").at("why").thrown();
            }
            booking.takeBack(id, why);
        });
    }

    /** What somebody says of a line, in one member of the body; answers the line as it stands then. */
    private Response said(
            String operation, String what, UUID id, String body, String member, int longest, Consumer<String> deed) {
        return once.answer(operation, what + id + body, () -> {
            var _ = lines.one(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String words = asked.text(member, longest);
            asked.nothingElse().understood();
            deed.accept(words);
            return Once.Answer.done(one(id));
        });
    }

    private static LineDocument document(BankLine line, boolean waits, Optional<Proposal> proposal) {
        return new LineDocument(
                line.id(),
                line.bank(),
                line.day(),
                Amount.of(line.amount()),
                line.words(),
                line.reference(),
                waits,
                proposal.map(BankLinesApi::document).orElse(null));
    }

    private static ProposalDocument document(Proposal one) {
        return new ProposalDocument(
                one.what().name().toLowerCase(Locale.ROOT),
                one.customerId(),
                one.customer(),
                one.paymentId(),
                one.invoices().stream().map(Proposal.Target::invoiceId).toList(),
                one.why().stream()
                        .map(why -> why.name().toLowerCase(Locale.ROOT))
                        .toList(),
                one.sure(),
                one.shown());
    }
}
