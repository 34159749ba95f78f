package changeover.billing.reminders;

import changeover.billing.documents.DayInPaper;
import changeover.billing.notices.FreeLetter;
import changeover.contracts.tenants.Locales;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;

/** A reminder's words: a line for each document, what they come to, and how long the oldest is late. */
final class ReminderText {

    private static final Wording LINE = new Wording(
            "{label} of {day}, to be paid by {due}: {open}",
            "{label} du {day}, à payer au plus tard le {due}\u00a0: {open}");

    private static final Wording LEFT = new Wording(
            "{label} of {day}, to be paid by {due}: {open}, less {kept} that we keep for you: {left}",
            "{label} du {day}, à payer au plus tard le {due}\u00a0: {open}, moins {kept} que nous gardons pour vous\u00a0: {left}");

    private ReminderText() {}

    static FreeLetter of(DueReminder reminder, LocalDate day, String language, String kind, UUID id) {
        Locale locale = Locales.of(language);
        String documents =
                reminder.items().stream().map(asked -> line(asked, locale)).collect(Collectors.joining("\n"));
        long late = reminder.items().stream()
                .map(asked -> asked.daysLate(day))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        String total = reminder.total().format(locale);
        Step step = reminder.step();
        return new FreeLetter(
                kind,
                id,
                filled(step.subject().in(locale), "", total, late),
                filled(step.body().in(locale), documents, total, late));
    }

    private static String line(DueReminder.Asked asked, Locale locale) {
        return (asked.kept().isZero() ? LINE : LEFT)
                .in(locale)
                .replace("{label}", asked.item().label())
                .replace("{day}", DayInPaper.of(asked.item().day(), locale))
                .replace("{due}", DayInPaper.of(asked.item().dueDay(), locale))
                .replace("{open}", asked.item().open().format(locale))
                .replace("{kept}", asked.kept().format(locale))
                .replace("{left}", asked.left().format(locale));
    }

    private static String filled(String text, String documents, String total, long late) {
        return text.replace("{days}", String.valueOf(late))
                .replace("{total}", total)
                .replace("{documents}", documents);
    }
}
