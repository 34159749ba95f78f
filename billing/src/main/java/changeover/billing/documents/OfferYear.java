package changeover.billing.documents;

import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The forecast of an offer's year in sentences: when we come, and what can no longer be kept. */
record OfferYear(Words words, OfferForecast year) {

    List<String> visits() {
        return year.visits().stream()
                .map(visit -> words.say("offer.visit", Map.of("weeks", weeks(visit.window()), "tasks", visit.tasks())))
                .toList();
    }

    List<String> notThisYear() {
        List<String> sentences = new ArrayList<>();
        for (OfferForecast.Gone gone : year.gone()) {
            String season = gone.season().in(words.language());
            sentences.add(gone.next()
                    .map(next -> words.say("offer.gone-next", Map.of("season", season, "weeks", weeks(next))))
                    .orElseGet(() -> words.say("offer.gone", "season", season)));
        }
        for (OfferForecast.NotKept unkept : year.unkept()) {
            sentences.add(words.say(
                    "offer.unkept",
                    Map.of(
                            "task", unkept.task().in(words.language()),
                            "weeks", weeks(unkept.window()),
                            "why", unkept.why().in(words.language()))));
        }
        return sentences;
    }

    private String weeks(Window window) {
        Figures figures = new Figures(words);
        return words.say(
                "offer.weeks", Map.of("from", figures.day(window.from()), "until", figures.day(window.last())));
    }
}
