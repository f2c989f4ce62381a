package slopewright.evaluation;

import java.util.Optional;
import java.util.stream.Stream;

import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** Which equipment types serve a family: those made for it, or for the one whose rules it follows. */
public final class FamilyEquipment {

    private FamilyEquipment() {
    }

    /** Returns whether an equipment type serves a family. */
    public static boolean serves(EquipmentType type, IndicatorFamily family) {
        return Families.find(String.valueOf(type.getFamilyKey())).filter(made -> made.ruleKey().equals(family.ruleKey())).isPresent();
    }

    /** Returns the equipment types of a project that serve a family, in document order. */
    public static Stream<EquipmentType> in(Project project, IndicatorFamily family) {
        return Optional.ofNullable(project.getAerodrome()).stream().flatMap(aerodrome -> aerodrome.getEquipmentTypes().stream())
                .filter(type -> serves(type, family));
    }
}
