package changeover.contracts.tenants;

import java.time.ZoneId;
import java.util.UUID;

/** A business as it stands before anybody has come in: enough to find it, and the role of the person who knocks. */
public record Door(
        UUID tenantId, String slug, String name, ZoneId zone, String language, Role role, String personLanguage) {}
