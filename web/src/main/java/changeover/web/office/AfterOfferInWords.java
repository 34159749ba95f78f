package changeover.web.office;

import changeover.billing.estimates.AnswersPutRight;
import changeover.billing.estimates.AskedMore;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What was said about an estimate beside the answer that counts: later yeses, questions for more, answers taken back. */
@ApplicationScoped
class AfterOfferInWords {

    public record More(String whole, String who, String when, String how, String words) {}

    /** A question for more: the one that waits, and those that were refused. @param no who said no and when, or empty */
    public record Question(String whole, String words, String day, String no) {}

    /** An answer that does not count any more, and why. */
    public record Undone(String who, String when, String by, String why) {}

    @Inject
    EstimateMoney money;

    @Inject
    AskingForMore asking;

    @Inject
    AnswersPutRight putRight;

    @Inject
    Businesses businesses;

    List<More> more(Estimate one, Frame frame) {
        return money.more(one).stream()
                .map(row -> new More(
                        row.whole().format(frame.locale()),
                        row.byName(),
                        at(row.at(), frame),
                        row.channel().wording().in(frame.locale()),
                        row.words()))
                .toList();
    }

    List<Question> questions(Estimate one, Frame frame) {
        List<AskedMore> all = asking.all(one.id());
        Optional<AskedMore> waits = AskingForMore.waiting(all, one.accepted());
        return all.stream()
                .filter(asked ->
                        asked.refused() != null || waits.filter(asked::equals).isPresent())
                .map(asked -> new Question(
                        asked.whole().format(frame.locale()),
                        asked.words(),
                        frame.brief(asked.day()),
                        no(asked, frame)))
                .toList();
    }

    private String no(AskedMore asked, Frame frame) {
        AskedMore.Refused refused = asked.refused();
        return refused == null ? "" : refused.byName() + ", " + at(refused.at(), frame);
    }

    List<Undone> undone(Estimate one, Frame frame) {
        return putRight.of(one.id()).stream()
                .map(was -> new Undone(was.byName(), at(was.at(), frame), was.undoneBy(), was.why()))
                .toList();
    }

    private String at(Instant at, Frame frame) {
        return CallRows.inWords(at, frame, businesses.current().zone());
    }
}
