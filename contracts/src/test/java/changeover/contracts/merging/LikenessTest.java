package changeover.contracts.merging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.merging.Likeness.Common;
import changeover.contracts.merging.Likeness.Dwelling;
import changeover.contracts.merging.Likeness.Pair;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LikenessTest {

    private static Dwelling home(
            int id,
            String street,
            @Nullable String unit,
            String city,
            @Nullable String postal,
            String who,
            String phone) {
        return new Dwelling(
                new UUID(0, id), street, unit, city, postal, Set.of(who), phone.isEmpty() ? Set.of() : Set.of(phone));
    }

    private static void alike(Dwelling one, Dwelling other, Common... common) {
        List<Pair> pairs = Likeness.among(List.of(other, one));
        assertEquals(common.length == 0 ? List.of() : List.of(new Pair(one.id(), other.id(), Set.of(common))), pairs);
    }

    @Test
    void the_same_street_and_number_written_by_two_people_is_one_address() {
        alike(
                home(1, "12, rue des Érables", null, "Sainte-Odette", "J0X 1Y0", "Ida Roe", "819 555-0142"),
                home(2, "12 Erables", "", "SAINTE ODETTE", null, "Roe, Ida", "(819) 555-0142"),
                Common.STREET,
                Common.PERSON,
                Common.TELEPHONE);
        alike(
                home(1, "8 av. du Moulin", null, "Val-Perdu", "J0X 1Y0", "Ida Roe", ""),
                home(2, "8 Avenue Moulin", null, "Val Perdu Sud", "j0x1y0", "Mara Quill", ""),
                Common.STREET);
    }

    @Test
    void two_dwellings_of_one_building_are_never_one() {
        alike(
                home(1, "12 Kiln Lane apt 3", null, "Port Ambrose", null, "Ida Roe", "819 555-0142"),
                home(2, "12 Kiln Lane", "4", "Port Ambrose", null, "Ida Roe", "819 555-0142"));
        alike(
                home(1, "12 Kiln Lane #3", null, "Port Ambrose", null, "Ida Roe", ""),
                home(2, "12 Kiln Lane", "apt. 3", "Port Ambrose", null, "Mara Quill", ""),
                Common.STREET);
    }

    @Test
    void another_number_street_or_town_is_another_home() {
        Dwelling one = home(1, "12 Kiln Lane", null, "Port Ambrose", null, "Ida Roe", "819 555-0142");
        alike(one, home(2, "14 Kiln Lane", null, "Port Ambrose", null, "Ida Roe", "819 555-0142"));
        alike(one, home(2, "12 Mill Lane", null, "Port Ambrose", null, "Mara Quill", ""));
        alike(one, home(2, "12 Kiln Lane", null, "Val-Perdu", "J0X 1Y0", "Mara Quill", ""));
        alike(home(1, "rang du Bord", null, "X", null, "A", ""), home(2, "rang du Bord", null, "X", null, "A", ""));
    }

    @Test
    void the_same_number_person_and_telephone_are_offered_though_the_street_is_written_otherwise() {
        alike(
                home(1, "12 Kiln Lane", null, "Port Ambrose", null, "Ida Roe", "819 555-0142 / 438 555-0101"),
                home(2, "12 Klin Lane", null, "Port Ambrose", null, "Ida Roe", "1 819 555-0142 ext 2"),
                Common.PERSON,
                Common.TELEPHONE);
    }
}
