package changeover.scheduling.closeout;

import changeover.contracts.digests.Sha256;
import changeover.contracts.pictures.Picture;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.ReportFacts.PhotoFact;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The bytes of photos: drawn anew when they come in, kept once by the SHA-256 of what the device sent, which is the name
 * the device knows them by.
 */
@ApplicationScoped
public class Photos {

    private static final String JPEG = "image/jpeg";

    @Inject
    EntityManager rows;

    /**
     * Keeps a photo; the same bytes again are kept once.
     *
     * @param named the SHA-256 that the device names it by, or null
     * @return its SHA-256 in small hexadecimal letters
     * @throws changeover.contracts.words.Refused when it is no picture, too large, or not the one that was named
     */
    public String store(byte[] bytes, @Nullable String named) {
        String sha256 = Sha256.hex(bytes);
        if (named != null && !named.equals(sha256)) {
            throw Refusal.of("closeout.photo-differs").at("sha256").thrown();
        }
        if (isThere(sha256)) {
            return sha256;
        }
        Picture picture = Picture.redrawn(bytes);
        rows.createNativeQuery("""
                        insert into photo_bytes (sha256, kept_sha256, media_type, width, height, bytes)
                        values (:sha256, :kept, :type, :width, :height, :bytes)
                        on conflict (tenant_id, sha256) do nothing
                        """)
                .setParameter("sha256", sha256)
                .setParameter("kept", Sha256.hex(picture.jpeg()))
                .setParameter("type", JPEG)
                .setParameter("width", picture.width())
                .setParameter("height", picture.height())
                .setParameter("bytes", picture.jpeg())
                .executeUpdate();
        return sha256;
    }

    public boolean isThere(String sha256) {
        return !rows.createNativeQuery("select sha256 from photo_bytes where sha256 = :sha256", String.class)
                .setParameter("sha256", sha256)
                .getResultList()
                .isEmpty();
    }

    /** The photo as we keep it, a JPEG. */
    public Optional<Picture> picture(String sha256) {
        return rows.createNativeQuery("select bytes from photo_bytes where sha256 = :sha256", byte[].class)
                .setParameter("sha256", sha256)
                .getResultStream()
                .map(bytes -> Picture.kept((byte[]) bytes))
                .findFirst();
    }

    /** The photo as we keep it, if it was taken at that visit: who may see the visit may see it. */
    public Optional<Picture> ofVisit(UUID visitId, String sha256) {
        boolean takenThere = !rows.createQuery("from Photo where visitId = :visit and sha256 = :sha256", Photo.class)
                .setParameter("visit", visitId)
                .setParameter("sha256", sha256)
                .getResultList()
                .isEmpty();
        return takenThere ? picture(sha256) : Optional.empty();
    }

    /** The photos of a visit by the finding they show; those of none are left out. */
    Map<UUID, List<PhotoFact>> byFinding(UUID visitId) {
        Map<UUID, List<PhotoFact>> shown = new LinkedHashMap<>();
        for (Photo photo : rows.createQuery("from Photo where visitId = :visit order by id", Photo.class)
                .setParameter("visit", visitId)
                .getResultList()) {
            photo.findingId()
                    .ifPresent(finding -> shown.computeIfAbsent(finding, _ -> new ArrayList<>())
                            .add(new PhotoFact(
                                    photo.id(),
                                    photo.sha256(),
                                    photo.caption().orElse(null),
                                    isThere(photo.sha256()))));
        }
        return shown;
    }
}
