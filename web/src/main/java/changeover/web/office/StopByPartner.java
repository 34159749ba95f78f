package changeover.web.office;

import changeover.contracts.words.Refused;
import changeover.scheduling.partners.Partner;
import changeover.scheduling.partners.PartnerPaper;
import changeover.scheduling.partners.Partners;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopDeeds;
import changeover.scheduling.stopped.StopEnd;
import changeover.web.session.Frame;
import changeover.web.session.OrderChoices;
import changeover.web.session.Typed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** That a licensed partner put a machine back in service, as the office writes it down. */
@ApplicationScoped
class StopByPartner {

    private static final Map<String, String> FIELDS = Map.of("day", "partnerDay", "done", "partnerDone");

    @Inject
    Partners partners;

    @Inject
    StopDeeds deeds;

    /** Those whose trade is the one of the ticket, each with the last day of its licence. */
    List<OrderChoices.Choice> choices(MachineStop stop, Frame frame) {
        return partners.all().stream()
                .filter(one -> Partner.ticketOf(one.trade())
                        .filter(stop.ticket()::equals)
                        .isPresent())
                .map(one -> new OrderChoices.Choice(one.id().toString(), words(one, frame)))
                .toList();
    }

    /** What the forms about a stop begin with. */
    static Map<String, String> known(Frame frame) {
        String day = frame.today().toString();
        String back = StopEnd.IN_SERVICE.code();
        return Map.of("who", frame.person(), "day", day, "how", back, "partnerHow", back, "partnerDay", day);
    }

    private static String words(Partner partner, Frame frame) {
        return partner.papers().stream()
                .filter(paper -> paper.kind().equals(PartnerPaper.LICENCE))
                .max(Comparator.comparing(PartnerPaper::expiresOn))
                .map(paper -> partner.name() + ", "
                        + Optional.ofNullable(paper.number())
                                .map(number -> number + ", ")
                                .orElse("")
                        + frame.brief(paper.expiresOn()))
                .orElse(partner.name());
    }

    void read(UUID stop, Typed typed, UUID by) {
        StopEnd how = StopEnd.of(typed.oneOf("partnerHow", StopEnd.codes()));
        UUID partner = typed.id("partner");
        LocalDate day = typed.day("partnerDay");
        String done = typed.line("partnerDone", 2000);
        typed.understood();
        try {
            deeds.endByPartner(stop, how, done == null ? "" : done, partner, day, by);
        } catch (Refused refused) {
            throw new Refused(refused.refusals().stream()
                    .map(one -> {
                        String field = one.field();
                        return field == null ? one : one.at(FIELDS.getOrDefault(field, field));
                    })
                    .toList());
        }
    }
}
