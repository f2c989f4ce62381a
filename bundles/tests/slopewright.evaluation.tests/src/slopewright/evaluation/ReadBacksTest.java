package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.ReadBacks.State;
import slopewright.model.Aerodrome;
import slopewright.model.EquipmentType;
import slopewright.model.GroundLevel;
import slopewright.model.MeasuredIntensity;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;

/** What a read-back seals, and what breaks it. */
class ReadBacksTest {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final Project project = MAKE.createProject();
    private final Aerodrome aerodrome = MAKE.createAerodrome();
    private final GroundLevel ground = MAKE.createGroundLevel();
    private final Place place = MAKE.createPlace();
    private final EquipmentType type = MAKE.createEquipmentType();

    ReadBacksTest() {
        project.setAerodrome(aerodrome);
        place.setLatitudeDeg(47.3);
        place.setLongitudeDeg(-11.9);
        place.setElevationM(86.6);
        ground.setPlace(place);
        ground.setSource("survey");
        aerodrome.getGroundLevels().add(ground);
        type.setName("set");
        type.getIntensities().add(intensity(20_000));
        type.getIntensities().add(intensity(12_000));
        aerodrome.getEquipmentTypes().add(type);
        Ids.assign(project);
    }

    private static MeasuredIntensity intensity(double cd) {
        MeasuredIntensity made = MAKE.createMeasuredIntensity();
        made.setIntensityCd(cd);
        return made;
    }

    private void keep() {
        ReadBacks.keep(project, ReadBacks.elements(project), "B. Bole", "2026-01-06");
    }

    /**
     * By sha256sum over the lines: ground-level-1, B. Bole, 2026-01-06, GroundLevel, "  place: Place", "    elevationM = 86.6",
     * "    latitudeDeg = 47.3", "    longitudeDeg = -11.9", joined by line feeds, none at the end.
     */
    @Test
    void theSealIsThatOfTheLines() {
        assertEquals("d4d78731fe3947973d2eebb843a799675d930dc700037d067ed1aa79d4f3d727", ReadBacks.seal(ground, "B. Bole", "2026-01-06"));
    }

    @Test
    void whatHasANameAndAGroundLevelAreReadBackWithTheirParts() {
        assertEquals(List.of(aerodrome, ground, type), ReadBacks.elements(project));
        assertEquals(Optional.of(ground), ReadBacks.holder(place));
        assertEquals(Optional.of(type), ReadBacks.holder(type.getIntensities().get(1)));
        assertEquals(Optional.empty(), ReadBacks.holder(project));
        assertThrows(IllegalArgumentException.class, () -> ReadBacks.keep(project, List.of(place), "B. Bole", "2026-01-06"));
    }

    @Test
    void aChangedDigitBreaksTheSealOfWhatHoldsIt() {
        assertEquals(State.ABSENT, ReadBacks.state(project, place));
        keep();
        assertEquals(State.SAME, ReadBacks.state(project, place));
        place.setElevationM(86.601);
        assertEquals(State.CHANGED, ReadBacks.state(project, place));
        assertEquals(State.SAME, ReadBacks.state(project, type));
        assertEquals(State.SAME, ReadBacks.state(project, aerodrome));
        keep();
        assertEquals(State.SAME, ReadBacks.state(project, ground));
        assertEquals(3, project.getReadBacks().size());
    }

    @Test
    void aPartThatIsGoneOrElsewhereBreaksTheSeal() {
        keep();
        type.getIntensities().move(0, 1);
        assertEquals(State.CHANGED, ReadBacks.state(project, type));
        type.getIntensities().move(0, 1);
        assertEquals(State.SAME, ReadBacks.state(project, type));
        EcoreUtil.remove(type.getIntensities().get(1));
        assertEquals(State.CHANGED, ReadBacks.state(project, type));
    }

    /** A remark, a name and a source are kept for the record: no result rests on them. */
    @Test
    void whatIsKeptForTheRecordIsNotSealed() {
        keep();
        ground.setSource("another survey");
        type.setName("another set");
        type.setRemarks("looked at");
        assertEquals(State.SAME, ReadBacks.state(project, ground));
        assertEquals(State.SAME, ReadBacks.state(project, type));
    }

    @Test
    void aChangedReadBackDoesNotHold() {
        keep();
        ReadBack readBack = ReadBacks.byElement(project).get(ground.getId());
        assertTrue(ReadBacks.holds(readBack, ground));
        readBack.setPerson("C. Cole");
        assertFalse(ReadBacks.holds(readBack, ground));
        readBack.setPerson("B. Bole");
        readBack.setDate("2026-01-07");
        assertFalse(ReadBacks.holds(readBack, ground));
        readBack.setDate("2026-01-06");
        assertTrue(ReadBacks.holds(readBack, ground));
        readBack.setSha256(readBack.getSha256().replace('a', 'b'));
        assertFalse(ReadBacks.holds(readBack, ground));
    }

    @Test
    void tidyingTakesOutWhatIsAboutNothing() {
        keep();
        EcoreUtil.remove(ground);
        ReadBacks.tidy(project);
        assertEquals(List.of("aerodrome-1", "equipment-type-1"), project.getReadBacks().stream().map(ReadBack::getElementId).toList());
    }
}
