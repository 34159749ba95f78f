package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.OrderChoices;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** A closed visit as it stands, written for whoever corrects it. */
@ApplicationScoped
class AmendmentViews {

    /** @param yesOrNo whether it is answered by one of the two */
    public record Reading(String field, String words, String unit, boolean yesOrNo) {}

    public record Task(UUID id, String outcome, String reason, String machine, String words, List<Reading> readings) {}

    /** What may be taken back. */
    public record Thing(String id, String words) {}

    /** A part that was used: another quantity of it may be written, or it is taken back. */
    public record Used(String id, String field, String words) {}

    /**
     * The visit as it stands.
     *
     * @param sentences what may be said of something that is found now
     * @param machines at which it may be found, or a part was fitted
     * @param places from which a part may have been taken
     */
    public record View(
            UUID visit,
            UUID homeId,
            String home,
            List<Task> tasks,
            List<Thing> things,
            List<Used> used,
            List<OrderChoices.Choice> sentences,
            List<OrderChoices.Choice> machines,
            List<OrderChoices.Choice> parts,
            List<OrderChoices.Choice> places) {}

    @Inject
    OwnCatalogue catalogue;

    @Inject
    OrderChoices choices;

    @Inject
    Parts parts;

    View of(VisitLists.Row row, StopLines.Lines lines, Locale locale) {
        Catalogue trade = catalogue.catalogue();
        return new View(
                row.id(),
                row.homeId(),
                row.street() + ", " + row.city(),
                lines.tasks().stream().map(task -> task(task, locale)).toList(),
                lines.said().stream()
                        .filter(said -> said.kind().equals("finding"))
                        .map(said -> thing(said, trade, locale))
                        .toList(),
                lines.said().stream()
                        .filter(said -> said.kind().equals("part"))
                        .map(said -> part(said, locale))
                        .toList(),
                trade.sentences().stream()
                        .map(one -> new OrderChoices.Choice(
                                one.code(), one.wording().in(locale)))
                        .toList(),
                choices.machines(row.homeId()),
                choices.parts(locale),
                choices.places());
    }

    private static Task task(DaySheet.TaskLine task, Locale locale) {
        return new Task(
                task.id(),
                "outcome." + task.id(),
                "reason." + task.id(),
                task.equipment() == null ? "" : task.equipment(),
                task.wording().in(locale),
                task.readings().stream()
                        .map(line -> new Reading(
                                AmendmentForm.field(task.id(), line.spec().code()),
                                line.spec().wording().in(locale),
                                Optional.ofNullable(line.spec().unit())
                                        .flatMap(UnitOfMeasure::find)
                                        .map(unit -> unit.symbol().in(locale))
                                        .orElse(""),
                                line.spec().form() == ReadingSpec.Form.YES_NO))
                        .toList());
    }

    private Used part(DaySheet.Said said, Locale locale) {
        String code = AmendmentForm.text(said, "part");
        String words = parts.everKnown(code)
                .map(KnownPart::name)
                .map(name -> name.in(locale))
                .orElse(code);
        return new Used(said.id().toString(), CorrectedParts.quantity(said.id()), words);
    }

    private static Thing thing(DaySheet.Said said, Catalogue trade, Locale locale) {
        Map<String, Object> body = said.body();
        String words = Optional.ofNullable(body.get("sentence"))
                .flatMap(code -> trade.findSentence(code.toString()))
                .map(Sentence::wording)
                .map(wording -> wording.in(locale))
                .orElse(AmendmentForm.text(said, "text"));
        return new Thing(said.id().toString(), words);
    }
}
