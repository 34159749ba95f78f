package changeover.web.office;

import changeover.billing.bank.BankBooking;
import changeover.billing.bank.BankLine;
import changeover.billing.bank.BankLines;
import changeover.billing.bank.Banks;
import changeover.billing.bank.KeptFiles;
import changeover.billing.bank.Proposal;
import changeover.billing.bank.Proposals;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The bank's lines that wait, each with what it may be and why; nothing is booked without a yes. */
@Path("/{slug}/money/bank")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class BankPages {

    private static final int SHOWN = 200;
    private static final int SAID = 50;

    /** @param proposal null where nothing fits */
    public record Waiting(
            UUID id,
            String day,
            String bank,
            String words,
            String amount,
            @Nullable May proposal) {}

    /**
     * @param payments how many were noted, each of its customer
     * @param together the way and the day of several
     * @param shown what the person sees, so that a yes is to nothing else
     */
    public record May(
            String what,
            String name,
            String documents,
            int payments,
            String together,
            List<String> why,
            boolean sure,
            String shown) {}

    public record Done(
            UUID id,
            String day,
            String words,
            String amount,
            String how,
            List<String> why,
            String said,
            @Nullable UUID customer,
            String name,
            int payments) {}

    /** @param more whether lines wait beyond those that are shown */
    public record View(
            List<Waiting> waiting,
            boolean more,
            List<Done> said,
            List<Banks.Bank> banks,
            List<KeptFilesInWords.Row> files) {

        public boolean proposes() {
            return waiting.stream().anyMatch(line -> line.proposal() != null);
        }
    }

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance bank(Frame frame, View view, List<String> refused, Said named);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Banks banks;

    @Inject
    KeptFiles files;

    @Inject
    KeptFilesInWords kept;

    @Inject
    BankLines lines;

    @Inject
    Proposals proposals;

    @Inject
    BankBooking booking;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(List.of(), Said.blank());
    }

    @POST
    @Path("banks")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String name = typed.text("name", 60);
                    typed.understood();
                    return "/" + slug + "/money/bank/files/" + banks.named(name);
                },
                refusals -> page(List.of(), Said.again(typed, refusals, frames.locale())));
    }

    /** A yes to each chosen line, as it was shown. */
    @POST
    @Path("bookings")
    public Response book(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    List<UUID> chosen =
                            typed.each("line").stream().flatMap(BankPages::id).toList();
                    if (chosen.isEmpty()) {
                        throw Refusal.of("bank.choose-lines").thrown();
                    }
                    Map<UUID, String> shown = new LinkedHashMap<>();
                    chosen.forEach(line -> shown.put(line, String.join("", typed.each("shown-" + line))));
                    booking.accept(shown);
                    return SaidOnce.at("/" + slug + "/money/bank", "bank-booked");
                },
                this::again);
    }

    @POST
    @Path("lines/{line}/taking-back")
    public Response takeBack(@PathParam("slug") String slug, @PathParam("line") UUID line) {
        return desk.answer(
                () -> {
                    var _ = lines.one(line).orElseThrow(NotFoundException::new);
                    boolean french = frames.locale().getLanguage().equals("fr");
                    booking.takeBack(line, french ? "Ligne de banque reprise" : "Line of the bank taken back");
                    return SaidOnce.at("/" + slug + "/money/bank", "bank-taken-back");
                },
                this::again);
    }

    /** A wrong file: what nobody has spoken of yet goes again. */
    @POST
    @Path("taken/{file}/withdrawal")
    public Response withdraw(@PathParam("slug") String slug, @PathParam("file") UUID file) {
        return desk.answer(
                () -> {
                    files.takeBack(file);
                    return SaidOnce.at("/" + slug + "/money/bank", "bank-file-back");
                },
                this::again);
    }

    private TemplateInstance again(List<Refusal> refusals) {
        return page(
                refusals.stream()
                        .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                        .toList(),
                Said.blank());
    }

    private TemplateInstance page(List<String> refused, Said named) {
        Frame frame = frames.of(Tab.MONEY);
        List<Waiting> waiting = new ArrayList<>();
        for (Map.Entry<BankLine, Optional<Proposal>> one :
                proposals.waiting(SHOWN + 1).entrySet()) {
            BankLine line = one.getKey();
            waiting.add(new Waiting(
                    line.id(),
                    frame.brief(line.day()),
                    line.bank(),
                    line.said(),
                    line.amount().format(frame.locale()),
                    one.getValue()
                            .map(proposal -> BankInWords.may(proposal, frame))
                            .orElse(null)));
        }
        boolean more = waiting.size() > SHOWN;
        List<Waiting> shown = more ? waiting.subList(0, SHOWN) : waiting;
        List<Done> said = lines.said(SAID).stream()
                .map(row -> BankInWords.done(row, frame))
                .toList();
        return Pages.bank(frame, new View(shown, more, said, banks.all(), kept.newest(frame)), refused, named);
    }

    private static Stream<UUID> id(String text) {
        try {
            return Stream.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Stream.empty();
        }
    }
}
