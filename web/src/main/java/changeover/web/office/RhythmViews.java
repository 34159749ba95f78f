package changeover.web.office;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.words.Wording;
import changeover.scheduling.households.FilterLooks;
import changeover.scheduling.households.SlotRhythm;
import changeover.scheduling.intervals.HouseholdInterval;
import changeover.scheduling.intervals.Look;
import changeover.scheduling.intervals.TimeInWords;
import changeover.web.session.FilterCurve;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Says a filter slot's rhythm in the reader's words. */
@ApplicationScoped
class RhythmViews {

    /** Of the curve's 41 points, every fifth stands in the table. */
    private static final int EVERY = 5;

    private static final Wording TITLE = new Wording(
            "The chance that the filter has turned grey, by weeks since it was put in",
            "La chance que le filtre soit devenu gris, selon les semaines depuis la pose");
    private static final Wording WITHOUT_WORD = new Wording("nobody said how it looked", "personne n’a dit son état");

    @Inject
    OwnCatalogue trade;

    RhythmView of(SlotRhythm rhythm, Frame frame) {
        Locale locale = frame.locale();
        HouseholdInterval learned = rhythm.learned();
        String sentence = learned.sentence().in(locale);
        Interval word = rhythm.seen().word();
        return new RhythmView(
                sentence,
                rhythm.seen().follows().name().toLowerCase(Locale.ROOT),
                often(rhythm, locale),
                word == null ? "" : word.basis(),
                who(word, locale),
                FilterCurve.svg(learned, TITLE.in(locale), sentence, locale),
                facts(rhythm, locale),
                points(learned, locale),
                rhythm.seen().told().reversed().stream()
                        .map(told -> line(told, frame))
                        .toList());
    }

    /** Who decided and when; of a label, where it can be read. */
    private static String who(@Nullable Interval word, Locale locale) {
        Interval.Decided decided = word == null ? null : word.decided();
        if (decided != null) {
            return decided.by() + ", " + DayInWords.of(decided.on()).in(locale);
        }
        return word == null || word.source() == null ? "" : word.source();
    }

    private String often(SlotRhythm rhythm, Locale locale) {
        OwnCatalogue.Own own = trade.read();
        Cadence sold = own.catalogue().task(rhythm.slot().taskCode()).cadence();
        Interval word = rhythm.seen().word();
        Cadence followed = switch (rhythm.seen().follows()) {
            case WORD -> word == null ? sold : word.cadence();
            case LEARNED -> rhythm.recommended();
            case SOLD -> sold;
        };
        return followed.sentence(own.seasons().climate()).in(locale);
    }

    private static List<RhythmView.Fact> facts(SlotRhythm rhythm, Locale locale) {
        HouseholdInterval learned = rhythm.learned();
        List<RhythmView.Fact> facts = new ArrayList<>();
        facts.add(fact(
                new Wording("A filter lasts here, on average", "Un filtre dure ici, en moyenne"),
                TimeInWords.of(learned.likeliest().meanDays()),
                locale));
        facts.add(fact(
                new Wording("Looked at then, it is grey", "Regardé à ce moment, il est gris"),
                chance(learned.rhythm().chanceAtCheck()),
                locale));
        facts.add(fact(
                new Wording(
                        "Clean at the look, it turns grey before the change",
                        "Propre au regard, il devient gris avant le remplacement"),
                chance(learned.rhythm().chanceAfterCheck()),
                locale));
        facts.add(fact(
                new Wording("Your business accepts", "Votre entreprise accepte"), chance(learned.setting()), locale));
        facts.add(fact(
                new Wording("Never longer than", "Jamais plus de"),
                new Wording(
                        TimeInWords.of(learned.limits().capDays()).en() + ", by "
                                + learned.limits().basis().en(),
                        TimeInWords.of(learned.limits().capDays()).fr() + ", selon "
                                + learned.limits().basis().fr()),
                locale));
        facts.add(fact(
                new Wording("Believed before anything was seen here", "Ce qu’on croyait avant d’avoir regardé ici"),
                belief(rhythm.others()),
                locale));
        return List.copyOf(facts);
    }

    private static Wording belief(int others) {
        if (others == 0) {
            return new Wording(
                    "published advice; no other home like it was watched yet",
                    "les conseils publiés; aucune autre maison semblable n’a été suivie encore");
        }
        return others == 1
                ? new Wording(
                        "one other home of yours with such a filter", "une autre de vos maisons avec un tel filtre")
                : new Wording(
                        others + " other homes of yours with such a filter",
                        others + " autres de vos maisons avec un tel filtre");
    }

    private static Wording chance(double chance) {
        long ofHundred = Math.round(chance * 100);
        return new Wording(ofHundred + " times in a hundred", ofHundred + " fois sur cent");
    }

    private static RhythmView.Fact fact(Wording caption, Wording value, Locale locale) {
        return new RhythmView.Fact(caption.in(locale), value.in(locale));
    }

    private static List<RhythmView.Point> points(HouseholdInterval learned, Locale locale) {
        List<HouseholdInterval.Point> curve = learned.curve();
        return IntStream.iterate(EVERY, step -> step < curve.size(), step -> step + EVERY)
                .mapToObj(curve::get)
                .map(point -> new RhythmView.Point(
                        TimeInWords.of(point.days()).in(locale),
                        percent(point.chanceGrey(), locale),
                        percent(point.low(), locale)
                                + (locale.getLanguage().equals("fr") ? " à " : " to ")
                                + percent(point.high(), locale)))
                .toList();
    }

    private static String percent(double chance, Locale locale) {
        return Math.round(chance * 100) + (locale.getLanguage().equals("fr") ? "\u00a0%" : "%");
    }

    private static RhythmView.Line line(FilterLooks.Told told, Frame frame) {
        boolean technician = told.look().by() == Look.By.TECHNICIAN;
        return new RhythmView.Line(
                told.id() == null ? "" : told.id().toString(),
                frame.brief(told.look().day()),
                what(told.look().what()).in(frame.locale()),
                who(told.name(), technician).in(frame.locale()),
                told.visitId() == null ? "" : told.visitId().toString());
    }

    private static Wording who(String name, boolean technician) {
        return technician ? new Wording(name + ", at a visit", name + ", à une visite") : new Wording(name, name);
    }

    static Wording what(Look.What what) {
        return switch (what) {
            case CLEAN -> new Wording("still clean", "encore propre");
            case GREY -> new Wording("grey, left in", "gris, laissé en place");
            case CHANGED_CLEAN -> new Wording("changed while clean", "remplacé encore propre");
            case CHANGED_GREY -> new Wording("grey, changed", "gris, remplacé");
            case CHANGED -> new Wording("changed, " + WITHOUT_WORD.en(), "remplacé, " + WITHOUT_WORD.fr());
        };
    }
}
