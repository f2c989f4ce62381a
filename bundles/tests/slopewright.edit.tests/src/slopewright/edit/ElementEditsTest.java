package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.BookUse;
import slopewright.evaluation.Confirmations;
import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.Reviews;
import slopewright.geometry.FramePoint;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachType;
import slopewright.model.Obstacle;
import slopewright.model.ReadBack;
import slopewright.model.ReviewKind;
import slopewright.model.Runway;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.ValueConfirmation;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.ValueBook;

/** Edits of any element through the cycle of execute, undo and redo. */
class ElementEditsTest {

    private final Sample sample = new Sample();
    private final Runway runway = sample.aerodrome.getRunways().get(0);

    @Test
    void setAttributeSetsAndTakesAway() {
        RecordedEdit edit = SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, 30.0);
        EditHarness.cycle(sample.project, edit, () -> assertEquals(30.0, runway.getWidthM()));
        assertEquals(Set.of(runway.getId()), edit.touched());
        assertEquals("Change width m", edit.label());
        EditHarness.cycle(sample.project, SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, null), () -> assertNull(runway.getWidthM()));
        EditHarness.cycle(sample.project, SetAttribute.of(sample.end, Literals.APPROACH_HOST__APPROACH_TYPE, ApproachType.PRECISION_CAT_I),
                () -> assertEquals(ApproachType.PRECISION_CAT_I, sample.end.getApproachType()));
        EditHarness.cycle(sample.project, SetAttribute.of(sample.project, Literals.NAMED__NAME, "Other site"),
                () -> assertEquals("Other site", sample.project.getName()));
    }

    @Test
    void setAttributeRefusesWhatDoesNotFit() {
        assertThrows(EditException.class, () -> SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, "thirty"));
        assertThrows(EditException.class, () -> SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, Double.POSITIVE_INFINITY));
        assertThrows(EditException.class, () -> SetAttribute.of(runway, Literals.OBSTACLE__TOP_ELEVATION_M, 30.0));
        assertThrows(EditException.class, () -> SetAttribute.of(runway, Literals.IDENTIFIED__ID, "mine"));
    }

    @Test
    void setReferencesChangesTheGroups() {
        AeroplaneGroup light = SlopewrightFactory.eINSTANCE.createAeroplaneGroup();
        light.setName("light");
        EditHarness.cycle(sample.project, AddChild.of(sample.aerodrome, Literals.AERODROME__AEROPLANE_GROUPS, light),
                () -> assertEquals(2, sample.aerodrome.getAeroplaneGroups().size()));
        assertEquals("aeroplane-group-2", light.getId());
        var regular = Literals.APPROACH_HOST__REGULAR_GROUPS;
        EditHarness.cycle(sample.project, SetReferences.of(sample.end, regular, List.of(light, sample.group)),
                () -> assertEquals(List.of(light, sample.group), sample.end.getRegularGroups()));
        sample.withRow();
        var type = SlopewrightFactory.eINSTANCE.createEquipmentType();
        EditHarness.cycle(sample.project, AddChild.of(sample.aerodrome, Literals.AERODROME__EQUIPMENT_TYPES, type),
                () -> assertEquals("equipment-type-1", type.getId()));
        EditHarness.cycle(sample.project, SetReferences.of(sample.end.getAids().get(0), Literals.APPROACH_AID__EQUIPMENT, List.of(type)),
                () -> assertEquals(type, sample.end.getAids().get(0).getEquipment()));
        assertThrows(EditException.class, () -> SetReferences.of(sample.end, Literals.APPROACH_HOST__REGULAR_GROUPS, List.of(type)));
        assertThrows(EditException.class, () -> SetReferences.of(sample.end, Literals.APPROACH_HOST__AIDS, List.of()));
    }

    /** Round trip through the independent direction of the frame: within a millimetre. */
    @Test
    void addObstacleStandsWhereItWasPut() {
        AddChild edit = AddObstacle.at(sample.end, new FramePoint(-1200, 85, 30), "mast");
        EditHarness.cycle(sample.project, edit, () -> {
            Obstacle mast = sample.aerodrome.getObstacles().get(0);
            assertEquals(80.0, mast.getTopElevationM(), 1e-9);
            assertNull(mast.getPlaces().get(0).getElevationM(), "one elevation of its top is enough");
            FramePoint back = SiteFrame.of(sample.end).toFrame(mast.getPlaces().get(0), mast.getTopElevationM());
            assertEquals(-1200, back.alongM(), 0.001);
            assertEquals(85, back.rightM(), 0.001);
            assertEquals(30, back.heightM(), 0.001);
        });
        assertTrue(edit.touched().contains("obstacle-1"));
    }

    @Test
    void removeElementTakesItsUsesAlong() {
        EditHarness.cycle(sample.project, RemoveElement.of(sample.group), () -> {
            assertEquals(0, sample.aerodrome.getAeroplaneGroups().size());
            assertEquals(0, sample.end.getRegularGroups().size());
            assertEquals(0, sample.other.getRegularGroups().size());
        });
        EditHarness.cycle(sample.project, RemoveElement.of(runway), () -> assertEquals(0, sample.aerodrome.getRunways().size()));
        assertThrows(EditException.class, () -> RemoveElement.of(sample.project));
    }

    @Test
    void removeFromTheMiddleComesBackInTheMiddle() {
        for (String name : List.of("one", "two", "three")) {
            Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
            obstacle.setName(name);
            EditHarness.cycle(sample.project, AddObstacle.of(sample.aerodrome, obstacle),
                    () -> assertTrue(sample.aerodrome.getObstacles().contains(obstacle)));
        }
        EditHarness.cycle(sample.project, RemoveElement.of(sample.aerodrome.getObstacles().get(1)),
                () -> assertEquals(List.of("one", "three"), sample.aerodrome.getObstacles().stream().map(Obstacle::getName).toList()));
    }

    @Test
    void addChildRefusesWhatDoesNotFit() {
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        assertThrows(EditException.class, () -> AddChild.of(runway, Literals.AERODROME__OBSTACLES, obstacle));
        assertThrows(EditException.class, () -> AddChild.of(sample.aerodrome, Literals.AERODROME__AEROPLANE_GROUPS, sample.group));
    }

    @Test
    void compoundIsOneEdit() {
        AddAid add = AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.RIGHT);
        RecordedEdit narrower = SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, 30.0);
        RecordedEdit named = SetAttribute.of(add.aid(), Literals.NAMED__NAME, "right row");
        Compound both = Compound.of("Add right row", List.of(narrower, add, named));
        EditHarness.cycle(sample.project, both, () -> {
            assertEquals(30.0, runway.getWidthM());
            assertEquals("right row", sample.end.getAids().get(0).getName());
        });
        assertTrue(both.touched().containsAll(Set.of(runway.getId(), sample.end.getId(), add.aid().getId())));
    }

    @Test
    void compoundThatFailsHalfwayTakesAllBack() {
        RecordedEdit first = SetAttribute.of(runway, Literals.RUNWAY__WIDTH_M, 30.0);
        RecordedEdit second = SetAttribute.of(sample.end, Literals.APPROACH_HOST__DESIRED_SLOPE_DEG, null);
        RecordedEdit third = AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.RIGHT);
        Compound all = Compound.of("all", List.of(first, second, third));
        EditHarness.fails(sample.project, SitingException.class, all, "slope");
    }

    @Test
    void replaceContentTakesAnotherVersionOver() {
        Sample other = new Sample().withProfile().withRow();
        other.project.setAuthor("somebody");
        String wanted = EditHarness.text(other.project);
        EditHarness.cycle(sample.project, ReplaceContent.of("Restore", sample.project, other.project),
                () -> assertEquals(wanted, EditHarness.text(sample.project)));
    }

    @Test
    void aReadBackIsKeptOfWhatHoldsTheElement() {
        LocalDate day = LocalDate.of(2026, 1, 6);
        EditHarness.cycle(sample.project, KeepReadBack.of(List.of(sample.end.getThreshold(), sample.end), " B. Bole ", day), () -> {
            assertEquals(List.of(sample.end.getId()), sample.project.getReadBacks().stream().map(ReadBack::getElementId).toList());
            assertEquals("B. Bole", sample.project.getReadBacks().get(0).getPerson());
            assertEquals(ReadBacks.State.SAME, ReadBacks.state(sample.project, sample.end.getThreshold()));
        });
        EditHarness.cycle(sample.project, KeepReadBack.of(List.of(sample.end), "C. Cole", day),
                () -> assertEquals(List.of("C. Cole"), sample.project.getReadBacks().stream().map(ReadBack::getPerson).toList()));
        sample.project.setAuthor("A. Ames");
        assertThrows(EditException.class, () -> KeepReadBack.of(List.of(sample.end), "a. ames", day));
        assertThrows(EditException.class, () -> KeepReadBack.of(List.of(sample.end), " ", day));
        assertThrows(EditException.class, () -> KeepReadBack.of(List.of(sample.project), "B. Bole", day));
    }

    /** The notes of a review are one step of undo each; what is refused leaves nothing behind. */
    @Test
    void aReviewIsKeptNoteByNote() {
        LocalDate day = LocalDate.of(2026, 1, 6);
        sample.project.setAuthor("A. Ames");
        EditHarness.cycle(sample.project, KeepReviewNote.comment(sample.project, Optional.of(sample.end.getId()), Optional.of("EYE-01"),
                new Reviews.Said("Why here?", "B. Bole", day)), () -> assertEquals(Reviews.State.OPEN, state()));
        String id = sample.project.getReviewNotes().get(0).getId();
        EditHarness.cycle(sample.project, KeepReviewNote.reply(sample.project, id, ReviewKind.ANSWER, new Reviews.Said("For the wheels.",
                "A. Ames", day)), () -> assertEquals(Reviews.State.ANSWERED, state()));
        String before = EditHarness.text(sample.project);
        SitingException open = assertThrows(SitingException.class, () -> KeepReviewNote.signOff(sample.project,
                new Reviews.Said("", "B. Bole", day)).execute());
        assertEquals("review.refused.open", open.reason().key());
        SitingException author = assertThrows(SitingException.class, () -> KeepReviewNote.reply(sample.project, id, ReviewKind.ACCEPTED,
                new Reviews.Said("", "a. ames", day)).execute());
        assertEquals("review.refused.author", author.reason().key());
        assertEquals(before, EditHarness.text(sample.project));
        EditHarness.cycle(sample.project, KeepReviewNote.reply(sample.project, id, ReviewKind.ACCEPTED, new Reviews.Said("", "B. Bole",
                day)), () -> assertEquals(Reviews.State.ACCEPTED, state()));
        EditHarness.cycle(sample.project, KeepReviewNote.signOff(sample.project, new Reviews.Said("", "B. Bole", day)),
                () -> assertTrue(Reviews.isAsSigned(sample.project, Reviews.signedOff(sample.project).orElseThrow())));
    }

    private Reviews.State state() {
        return Reviews.threads(sample.project).get(0).state();
    }

    private static ValueBook.Entry entry(String key, ValueBook.Decision decision, Double own) {
        return ValueBook.Entry.open("icao:9th", key, 2, "min", "from-memory", "Doc 9157 Part 4", 1, "EYE-01").decided(decision,
                Optional.ofNullable(own), "read so", new ValueBook.Compared("our copy", "5th", "8.3", "A. Ames", "2026-01-05"))
                .signedOff("B. Bole", "2026-01-06");
    }

    @Test
    void aConfirmationIsKeptSealedInsteadOfAnotherOfTheSameValue() {
        ValueBook.Entry entry = entry("four-unit-row.boundary-allowance-min", ValueBook.Decision.CONFIRMED, null);
        for (String second : List.of("B. Bole", "C. Cole")) {
            EditHarness.cycle(sample.project, ConfirmValue.of(sample.project, BookUse.confirmation(entry.signedOff(second,
                    "2026-01-06"))), () -> {
                assertEquals(1, sample.project.getConfirmations().size());
                assertTrue(Confirmations.isSealed(sample.project.getConfirmations().get(0)));
            });
        }
        ValueConfirmation nobody = BookUse.confirmation(entry);
        nobody.setPerson("y");
        assertThrows(EditException.class, () -> ConfirmValue.of(sample.project, nobody));
        assertThrows(EditException.class, () -> ConfirmValue.of(sample.project, sample.project.getConfirmations().get(0)));
    }

    @Test
    void aBookIsTakenInsteadOfWhatWasTakenBefore() {
        ValueBook.Entry confirmed = entry("four-unit-row.boundary-allowance-min", ValueBook.Decision.CONFIRMED, null);
        ValueBook.Entry corrected = entry("two-unit-row.boundary-allowance-min", ValueBook.Decision.CORRECTED, 3.0);
        ValueBook.Entry rejected = entry("two-unit-row.setting-accuracy-min", ValueBook.Decision.REJECTED, null);
        ValueBook.Entry unused = entry("t-form.setting-accuracy-min", ValueBook.Decision.CONFIRMED, null);
        ValueBook book = ValueBook.of(List.of(confirmed, corrected, rejected, unused));
        Set<String> resting = Set.of(confirmed.name(), corrected.name(), rejected.name());
        EditHarness.cycle(sample.project, TakeBook.of(sample.project, book, "../book.csv", resting), () -> {
            assertEquals(2, sample.project.getConfirmations().size());
            assertEquals(Boolean.TRUE, sample.project.getConfirmations().get(1).getRejected());
            assertEquals(3, sample.project.getOverrides().get(0).getValue());
            assertEquals("../book.csv", sample.project.getBookPath());
        });
        EditHarness.cycle(sample.project, TakeBook.of(sample.project, ValueBook.of(List.of(rejected)), "../book.csv", resting), () -> {
            assertEquals(1, sample.project.getConfirmations().size());
            assertEquals(0, sample.project.getOverrides().size());
        });
    }
}
