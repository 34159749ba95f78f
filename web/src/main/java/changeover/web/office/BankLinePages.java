package changeover.web.office;

import changeover.billing.bank.BankBooking;
import changeover.billing.bank.BankLine;
import changeover.billing.bank.BankLines;
import changeover.billing.payments.OpenByAge;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
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
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

/** One line of the bank that somebody says by hand: split over documents, or no customer's money. */
@Path("/{slug}/money/bank/lines/{line}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class BankLinePages {

    private static final int PARTS = 6;

    public record Part(String number, String amount) {}

    public record View(
            UUID id,
            String day,
            String bank,
            String words,
            String amount,
            boolean cameIn,
            List<Part> parts,
            List<String> labels) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance bankline(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    BankLines lines;

    @Inject
    BankBooking booking;

    @Inject
    OpenByAge open;

    @GET
    @Transactional
    public TemplateInstance line(@PathParam("line") UUID line) {
        return page(line, Said.blank());
    }

    @POST
    @Path("split")
    public Response split(
            @PathParam("slug") String slug, @PathParam("line") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    BankLine line = found(id);
                    List<BankBooking.Share> shares = shares(typed, line);
                    typed.understood();
                    booking.split(id, shares);
                    return SaidOnce.at("/" + slug + "/money/bank", "bank-booked");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("dismissal")
    public Response dismiss(
            @PathParam("slug") String slug, @PathParam("line") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    String why = typed.text("why", 300);
                    typed.understood();
                    booking.dismiss(id, why);
                    return SaidOnce.at("/" + slug + "/money/bank", "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private List<BankBooking.Share> shares(Typed typed, BankLine line) {
        List<OpenByAge.Item> items = open.on(frames.of(Tab.MONEY).today(), null);
        List<BankBooking.Share> shares = new ArrayList<>();
        Set<UUID> named = new HashSet<>();
        for (int at = 1; at <= PARTS; at++) {
            String number = typed.line("number-" + at, 60);
            if (number != null) {
                Optional<OpenByAge.Item> item = items.stream()
                        .filter(one -> one.label().toUpperCase(Locale.ROOT).equals(number.toUpperCase(Locale.ROOT)))
                        .findFirst();
                if (item.isEmpty()) {
                    typed.refuse(Refusal.of("bank.not-open").at("number-" + at));
                    continue;
                }
                if (!named.add(item.get().id())) {
                    typed.refuse(Refusal.of("bank.part-twice").at("number-" + at));
                    continue;
                }
                boolean whole = typed.line("amount-" + at, 30) == null;
                Money amount = whole
                        ? item.get().open()
                        : typed.money("amount-" + at, line.amount().currency());
                shares.add(new BankBooking.Share(
                        item.get().customerId(), List.of(item.get().id()), amount));
            }
        }
        if (shares.isEmpty()) {
            typed.refuse(Refusal.of("bank.no-part").at("number-1"));
        }
        return BankBooking.withTheRest(line, shares);
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        BankLine line = found(id);
        List<Part> parts = IntStream.rangeClosed(1, PARTS)
                .mapToObj(at -> new Part("number-" + at, "amount-" + at))
                .toList();
        List<String> labels = open.on(frame.today(), null).stream()
                .limit(500)
                .map(OpenByAge.Item::label)
                .toList();
        return Pages.bankline(
                frame,
                new View(
                        id,
                        frame.inWords(line.day()),
                        line.bank(),
                        line.said(),
                        line.amount().format(frame.locale()),
                        line.amount().isPositive(),
                        parts,
                        labels),
                form);
    }

    private BankLine found(UUID id) {
        return lines.one(id).orElseThrow(NotFoundException::new);
    }
}
