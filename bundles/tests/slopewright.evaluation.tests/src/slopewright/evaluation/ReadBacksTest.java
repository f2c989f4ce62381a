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
import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.GroundLevel;
import slopewright.model.MeasuredIntensity;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Stage;
import slopewright.model.ValueOverride;
import slopewright.model.util.Ids;
import slopewright.standards.SignedNames;

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
     * By sha256sum over the lines: ground-level-1, B. Bole, 2026-01-06, GroundLevel, "  held by aerodrome-1 as groundLevels",
     * "  place: Place", "    elevationM = 86.6", "    latitudeDeg = 47.3", "    longitudeDeg = -11.9", joined by line
     * feeds, none at the end.
     */
    @Test
    void theSealIsThatOfTheLines() {
        assertEquals("3d6c3d39b7d0157dc98ab7464d90fdc1c7de1b89a169df0678a0b962ce5e8235", ReadBacks.seal(ground, "B. Bole", "2026-01-06"));
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

    /** The same aid at the other end of a runway is another aid, and a runway is measured from the first of its ends. */
    @Test
    void whatIsMovedBreaksItsSeal() {
        Runway runway = MAKE.createRunway();
        RunwayEnd west = MAKE.createRunwayEnd();
        RunwayEnd east = MAKE.createRunwayEnd();
        ApproachAid aid = MAKE.createApproachAid();
        runway.getEnds().addAll(List.of(west, east));
        west.getAids().add(aid);
        aerodrome.getRunways().add(runway);
        Ids.assign(project);
        keep();
        east.getAids().add(aid);
        assertEquals(State.CHANGED, ReadBacks.state(project, aid));
        assertEquals(State.SAME, ReadBacks.state(project, west));
        west.getAids().add(aid);
        assertEquals(State.SAME, ReadBacks.state(project, aid));
        runway.getEnds().move(0, east);
        assertEquals(State.CHANGED, ReadBacks.state(project, west));
        assertEquals(State.CHANGED, ReadBacks.state(project, east));
    }

    /** What every height means, and by which values all is judged. */
    @Test
    void theDatumAndWhatTheProjectSaysForAllAreReadBackWithTheAerodrome() {
        ValueOverride override = MAKE.createValueOverride();
        override.setValue(0.5);
        project.getOverrides().add(override);
        Ids.assign(project);
        List<Runnable> changes = List.of(() -> aerodrome.setVerticalDatum("another sea level"),
                () -> aerodrome.setCoordinateReference("local"), () -> aerodrome.setGeoidOffsetM(52.4),
                () -> project.setRuleSetKey("icao:9th"), () -> project.setRuleSetFolder("rules"), () -> project.setStage(Stage.SET_UP),
                () -> override.setValue(0.4), () -> override.setUnit("m"), () -> project.getOverrides().clear());
        for (Runnable change : changes) {
            keep();
            assertEquals(State.SAME, ReadBacks.state(project, aerodrome));
            change.run();
            assertEquals(State.CHANGED, ReadBacks.state(project, aerodrome), "change " + changes.indexOf(change));
            assertEquals(State.SAME, ReadBacks.state(project, type));
        }
        keep();
        project.setDate("2026-02-01");
        project.setRevision("B");
        project.getConfirmations().add(MAKE.createValueConfirmation());
        Ids.assign(project);
        assertEquals(State.SAME, ReadBacks.state(project, aerodrome));
    }

    @Test
    void theAuthorIsKnownByTheLettersOfTheName() {
        assertFalse(ReadBacks.isAuthor(project, "R. Tamsin"));
        assertFalse(ReadBacks.isAuthor(project, null));
        project.setAuthor("R. Támsin");
        for (String same : List.of("R. Támsin", "R Tamsin", "r.tamsin ", "Tamsin, R.", "RTAMSIN", "R. Támsin",
                "R. Tamsin (surveyor)")) {
            assertTrue(ReadBacks.isAuthor(project, same), same);
        }
        for (String different : List.of("S. Tamsin", "R. Tamson", "", "..")) {
            assertFalse(ReadBacks.isAuthor(project, different), different);
        }
        assertFalse(SignedNames.isName(" .1"));
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
