package changeover.web.office;

import changeover.contracts.money.Money;
import changeover.scheduling.claims.PartClaim;
import changeover.scheduling.claims.PartClaims;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Claims in a line. */
@ApplicationScoped
public class ClaimRows {

    /**
     * A claim in words.
     *
     * @param returned when the old part went back, or empty
     * @param answer when the maker answered, or empty
     * @param amount what was credited; empty where it was refused or not answered
     */
    public record Line(
            UUID id,
            UUID visitId,
            UUID homeId,
            String home,
            String machine,
            String part,
            String oldSerial,
            String newSerial,
            String maker,
            String number,
            String claimed,
            String returned,
            String credit,
            String answer,
            String amount,
            String words,
            int version) {}

    @Inject
    PartClaims claims;

    List<Line> ofVisit(UUID visit, Frame frame) {
        return lines(claims.ofVisit(visit), frame);
    }

    List<Line> lines(List<PartClaim> all, Frame frame) {
        return all.stream().map(claim -> line(claim, frame)).toList();
    }

    static Line line(PartClaim claim, Frame frame) {
        PartClaim.Answer answer = claim.answer();
        return new Line(
                claim.id(),
                claim.visitId(),
                claim.homeId(),
                claim.home(),
                said(claim.machine()),
                claim.part().in(frame.locale()),
                said(claim.oldSerial()),
                said(claim.newSerial()),
                claim.maker(),
                said(claim.number()),
                frame.brief(claim.claimedOn()),
                said(claim.returnedOn(), frame),
                said(claim.credit(), frame),
                answer == null ? "" : frame.brief(answer.day()),
                answer == null ? "" : said(answer.amount(), frame),
                answer == null ? "" : said(answer.words()),
                claim.version());
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String said(@Nullable LocalDate day, Frame frame) {
        return day == null ? "" : frame.brief(day);
    }

    private static String said(@Nullable Money amount, Frame frame) {
        return amount == null ? "" : amount.format(frame.locale());
    }
}
