package changeover.web.office;

import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.FormRows;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The form of a kind of equipment: both wordings, what fits it and what its nameplate says, a row each. */
final class OwnKindForm {

    static final int MOST_FACTS = 12;

    private static final List<String> TELLING = List.of("name", "en", "fr", "choices");
    private static final Set<String> FORMS =
            Arrays.stream(Fact.Form.values()).map(OwnKindForm::code).collect(Collectors.toUnmodifiableSet());

    private final Typed typed;
    private final FormRows rows = new FormRows();
    private boolean understood;

    OwnKindForm(Typed typed) {
        this.typed = typed;
    }

    /** @param code of the kind that is changed; null for a new one, which brings its own */
    Kind read(@Nullable String code) {
        var kind = new Kind(
                code == null ? line("code", 60) : code,
                new Wording(line("wordingEn", 200), line("wordingFr", 200)),
                facts("fits"),
                facts("plate"));
        typed.understood();
        understood = true;
        return kind;
    }

    List<Refusal> placed(List<Refusal> refusals) {
        return understood ? rows.placed(refusals) : refusals;
    }

    static Said filled(Kind kind) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("wordingEn", kind.wording().en());
        fields.put("wordingFr", kind.wording().fr());
        fill(fields, "fits", kind.fits());
        fill(fields, "plate", kind.nameplate());
        return Said.filled(fields);
    }

    private List<Fact> facts(String group) {
        var facts = new ArrayList<Fact>();
        for (FormRows.Row row : rows.filled(typed, group, MOST_FACTS, TELLING)) {
            facts.add(new Fact(
                    line(row.of("name"), 60),
                    new Wording(line(row.of("en"), 200), line(row.of("fr"), 200)),
                    Fact.Form.valueOf(typed.oneOf(row.of("form"), FORMS).toUpperCase(Locale.ROOT)),
                    typed.line(row.of("unit"), 20),
                    choices(row.of("choices")),
                    typed.line(row.of("part"), 60)));
        }
        return facts;
    }

    private List<Fact.Choice> choices(String field) {
        String text = typed.line(field, 2000);
        var choices = new ArrayList<Fact.Choice>();
        for (String line : text == null ? List.<String>of() : text.lines().toList()) {
            String[] said = line.split("=", 3);
            if (said.length == 3 && Arrays.stream(said).noneMatch(String::isBlank)) {
                choices.add(new Fact.Choice(said[0].strip(), new Wording(said[1].strip(), said[2].strip())));
            } else if (!line.isBlank()) {
                typed.refuse(Refusal.of("own-kind.choice-line").at(field));
                return choices;
            }
        }
        return choices;
    }

    private String line(String field, int most) {
        String text = typed.line(field, most);
        return text == null ? "" : text;
    }

    private static void fill(Map<String, String> fields, String group, List<Fact> facts) {
        for (int at = 0; at < facts.size(); at++) {
            Fact fact = facts.get(at);
            FormRows.Row row = FormRows.Row.of(group, at);
            fields.put(row.of("name"), fact.name());
            fields.put(row.of("en"), fact.wording().en());
            fields.put(row.of("fr"), fact.wording().fr());
            fields.put(row.of("form"), code(fact.form()));
            fields.put(row.of("unit"), fact.unit() == null ? "" : fact.unit());
            fields.put(row.of("part"), fact.part() == null ? "" : fact.part());
            fields.put(
                    row.of("choices"),
                    fact.choices().stream()
                            .map(one -> one.value() + " = " + one.wording().en() + " = "
                                    + one.wording().fr())
                            .collect(Collectors.joining("\n")));
        }
    }

    private static String code(Fact.Form form) {
        return form.name().toLowerCase(Locale.ROOT);
    }
}
