package changeover.web.session;

import changeover.billing.documents.band.DayWords;
import changeover.billing.documents.band.Turn;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Every page stands in a frame that says whose shop it is, who is here, which tab is open and which day it is.
 *
 * @param tagline what the shop does and where, or empty
 * @param person the name of who is signed in, or empty on a page that needs no sign-in
 * @param role owner, office, technician, accountant, or empty
 * @param language the language of the page, as a tag: {@code en} or {@code fr-CA}
 * @param open the tab this page stands under, or none
 * @param theme {@code system}, {@code day} or {@code night}
 * @param turns the turns to cooling and to heating of this calendar year, for the year rule
 * @param rehearsal whether the day is a rehearsal's day, which every page then says
 * @param said one sentence about what was just done, shown once, or none
 * @param path the address of this page, to come back to after the language was changed
 */
public record Frame(
        String business,
        String tagline,
        String slug,
        String person,
        String role,
        String language,
        @Nullable Tab open,
        LocalDate today,
        String theme,
        List<Turn> turns,
        boolean rehearsal,
        @Nullable String said,
        String path) {

    /** An address inside this business: {@code at("homes")} is {@code /slug/homes}. */
    public String at(String rest) {
        return "/" + slug + "/" + rest;
    }

    /** Whether the page stands under the tab of this address; answers the words a reader's aid wants. */
    public boolean stands(String tab) {
        return open != null && open.path().equals(tab);
    }

    /** The page's locale. */
    public Locale locale() {
        return Locale.forLanguageTag(language);
    }

    /** The tag of the language one may change to. */
    public String otherLanguage() {
        return locale().getLanguage().equals("fr") ? "en" : "fr-CA";
    }

    /** The day in words, with its year. */
    public String day() {
        return DayWords.of(locale()).full(today);
    }

    /** Any day in words, with its year, in the page's language. */
    public String inWords(LocalDate other) {
        return DayWords.of(locale()).full(other);
    }

    /** A day in few words: 7 Oct, and with its year where it is not this year's. */
    public String brief(LocalDate other) {
        DayWords words = DayWords.of(locale());
        return other.getYear() == today.getYear() ? words.brief(other) : words.briefWithYear(other);
    }

    /** The strip under the header: the calendar year, both turns, and today. */
    public String yearRule() {
        return YearRule.svg(today, turns, locale());
    }
}
