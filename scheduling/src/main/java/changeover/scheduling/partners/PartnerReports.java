package changeover.scheduling.partners;

import changeover.contracts.pictures.Picture;
import changeover.contracts.tenants.Ids;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;

/** The reports that partners hand in: a PDF as it came, or a picture, which we draw anew. Each newer one is kept beside the earlier. */
@ApplicationScoped
public class PartnerReports {

    /** Bytes at most. */
    public static final int LARGEST = 5_000_000;

    private static final byte[] PDF = "%PDF-".getBytes(StandardCharsets.US_ASCII);

    /** A report as it is kept; two are never compared. */
    public record Kept(UUID id, String mediaType, byte[] bytes) {

        public boolean isPdf() {
            return mediaType.equals("application/pdf");
        }
    }

    @Inject
    EntityManager rows;

    @Inject
    GivenVisits given;

    /** @throws changeover.contracts.words.Refused when it is neither a PDF nor a picture, or too large, or no partner has the visit */
    public UUID keep(UUID visit, byte[] handedIn) {
        GivenVisit with = given.of(visit)
                .orElseThrow(() -> Refusal.of("partner.not-given").thrown());
        if (handedIn.length == 0) {
            throw Refusal.of("partner.no-report").at("file").thrown();
        }
        boolean pdf = handedIn.length > PDF.length && Arrays.equals(PDF, Arrays.copyOf(handedIn, PDF.length));
        byte[] bytes = pdf ? handedIn : redrawn(handedIn);
        if (bytes.length > LARGEST) {
            throw Refusal.of("partner.report-too-large").at("file").thrown();
        }
        UUID id = Ids.next();
        rows.createNativeQuery("insert into partner_report (id, visit_id, partner_id, media_type, bytes)"
                        + " values (:id, :visit, :partner, :type, :bytes)")
                .setParameter("id", id)
                .setParameter("visit", visit)
                .setParameter("partner", with.partner())
                .setParameter("type", pdf ? "application/pdf" : "image/jpeg")
                .setParameter("bytes", bytes)
                .executeUpdate();
        return id;
    }

    private static byte[] redrawn(byte[] picture) {
        try {
            return Picture.redrawn(picture).jpeg();
        } catch (Refused refused) {
            throw new Refused(
                    refused.refusals().stream().map(one -> one.at("file")).toList());
        }
    }

    /** The newest of a visit. */
    public Optional<Kept> newest(UUID visit) {
        return rows.createNativeQuery(
                        "select id, media_type, bytes from partner_report where visit_id = :visit order by id desc",
                        Tuple.class)
                .setParameter("visit", visit)
                .setMaxResults(1)
                .getResultStream()
                .map(row -> {
                    Tuple found = (Tuple) row;
                    return new Kept(
                            found.get("id", UUID.class),
                            found.get("media_type", String.class),
                            found.get("bytes", byte[].class));
                })
                .findFirst();
    }
}
