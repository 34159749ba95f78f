package changeover.billing.documents;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.pictures.Picture;
import io.agroal.api.AgroalDataSource;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The findings of a visit, the gravest first, each with its photos and what happens next. */
final class ReportFindings {

    private static final String FINDINGS = """
            select f.id, f.level, e.name, f.sentence_code, f.text, f.next_step, f.answer, f.told_to, f.visit_task_id
            from finding f
            left join equipment e on e.tenant_id = f.tenant_id and e.id = f.equipment_id
            where f.tenant_id = current_tenant() and f.visit_id = ?::uuid order by f.id
            """;
    private static final String PHOTOS = """
            select p.finding_id, b.bytes, p.caption from photo p
            join photo_bytes b on b.tenant_id = p.tenant_id and b.sha256 = p.sha256
            where p.tenant_id = current_tenant() and p.visit_id = ?::uuid and p.finding_id is not null
              and b.media_type = 'image/jpeg' order by p.id
            """;

    private final Catalogue catalogue;
    private final Words words;
    private final Map<UUID, Integer> numbers = new LinkedHashMap<>();

    private record Row(UUID id, @Nullable UUID task, ReportSheet.Finding finding) {}

    private record Taken(UUID finding, ReportSheet.Photo photo) {}

    ReportFindings(Catalogue catalogue, Words words) {
        this.catalogue = catalogue;
        this.words = words;
    }

    List<ReportSheet.Finding> of(AgroalDataSource database, UUID visit) {
        Map<UUID, List<ReportSheet.Photo>> photos = new LinkedHashMap<>();
        for (Taken one : new Question(database, PHOTOS).all(ReportFindings::taken, visit)) {
            photos.computeIfAbsent(one.finding(), id -> new ArrayList<>()).add(one.photo());
        }
        List<Row> rows = new Question(database, FINDINGS).all(row -> read(row, photos), visit);
        List<Row> gravest = rows.stream()
                .sorted(Comparator.comparing((Row row) -> row.finding().level()).reversed())
                .toList();
        for (int number = 1; number <= gravest.size(); number++) {
            UUID task = gravest.get(number - 1).task();
            if (task != null) {
                numbers.putIfAbsent(task, number);
            }
        }
        return gravest.stream().map(Row::finding).toList();
    }

    /** The number of the first finding of each task; after {@link #of}. */
    Map<UUID, Integer> numbersByTask() {
        return numbers;
    }

    private Row read(ResultSet row, Map<UUID, List<ReportSheet.Photo>> photos) throws SQLException {
        UUID id = row.getObject(1, UUID.class);
        FindingLevel level = FindingLevel.ofCode(row.getString(2));
        String sentence = row.getString(4);
        String text = sentence == null
                ? row.getString(5)
                : catalogue
                        .findSentence(sentence)
                        .map(found -> found.wording().in(words.language()))
                        .orElse(sentence);
        ReportSheet.Finding finding = new ReportSheet.Finding(
                level,
                row.getString(3),
                text,
                next(level, row.getString(6), row.getString(7)),
                answer(row.getString(7), row.getString(8)),
                photos.getOrDefault(id, List.of()));
        return new Row(id, row.getObject(9, UUID.class), finding);
    }

    private @Nullable String next(FindingLevel level, @Nullable String step, @Nullable String answer) {
        if ("no".equals(answer)) {
            return words.say(level == FindingLevel.DO_NOT_USE ? "next.stays-off" : "next.nothing");
        }
        if (step != null) {
            return words.say("next." + step);
        }
        return level == FindingLevel.DO_NOT_USE ? words.say("next.stays-off") : null;
    }

    private @Nullable String answer(@Nullable String answer, @Nullable String toldTo) {
        if (toldTo == null) {
            return null;
        }
        return words.say(answer == null ? "answer.told" : "answer.told-" + answer, "name", toldTo);
    }

    private static Taken taken(ResultSet row) throws SQLException {
        return new Taken(
                row.getObject(1, UUID.class), new ReportSheet.Photo(Picture.kept(row.getBytes(2)), row.getString(3)));
    }
}
