package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.checks.Checks;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Confirmations;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.GroundLevel;
import slopewright.model.HandOrder;
import slopewright.model.Helipad;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;
import slopewright.model.Project;
import slopewright.model.SightHair;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.util.Projects;
import slopewright.report.internal.card.CardDocument;
import slopewright.report.internal.pdf.PdfDocument;
import slopewright.report.internal.pdf.Pictures;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** The card with which a portable unit is set up, and what keeps it from use. */
class SetUpCardTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final String STOP = "NOT FOR USE";

    private Project project;
    private ApproachAid aid;

    @BeforeEach
    void load() {
        project = Demo.project("harrow-vale");
        aid = Demo.aid(project, "Portable unit, north pad");
        project.getAerodrome().getMagneticVariation().setVariationDeg(-4.0);
        project.getAerodrome().getMagneticVariation().setAnnualChangeDeg(0.15);
        project.getAerodrome().getMagneticVariation().setDate("2026-01-01");
    }

    /** Makes a unit of the demo one against which nothing stands: a variation as the model has it, read back, and every value confirmed. */
    private void clear() {
        project.getAerodrome().getMagneticVariation().setVariationDeg(-2.46 - 0.15 * 151 / 365);
        ReadBacks.keep(project, ReadBacks.elements(project), "N. Example", "2026-05-30");
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        Checks.run(evaluation, rule -> true).outcomes().stream().flatMap(outcome -> outcome.citations().stream())
                .filter(Citation::toConfirm).map(Citation::key).distinct().forEach(key -> evaluation.aid(aid).rules().find(key)
                        .ifPresent(value -> Confirmations.keep(project, confirmation(key, value))));
    }

    private static ValueConfirmation confirmation(String key, CitedValue value) {
        ValueConfirmation confirmation = SlopewrightFactory.eINSTANCE.createValueConfirmation();
        confirmation.setId("confirmed-" + key);
        confirmation.setValueKey(key);
        confirmation.setRuleSetKey("faa:2010");
        confirmation.setValue(value.value());
        confirmation.setUnit(value.unit());
        confirmation.setSource("invented for the test");
        confirmation.setPerson("N. Example");
        confirmation.setDate("2026-05-30");
        return confirmation;
    }

    private SetUpCard card(PaperSize paper, Locale language, Reports.Format format) throws ReportException {
        return SetUpCards.write(ProjectEvaluation.of(project, Optional.empty()), aid, DAY, new ReportOptions(DAY.toString(), paper)
                .in(language), format);
    }

    private SetUpCard html() throws ReportException {
        return card(PaperSize.A4, Locale.ENGLISH, Reports.Format.HTML);
    }

    private static String text(SetUpCard card) {
        return Demo.text(new String(card.bytes(), StandardCharsets.UTF_8));
    }

    private static String reasons(SetUpCard card) {
        return card.reasons().stream().map(Message::english).toList().toString();
    }

    /**
     * The demo's unit: 1000 ft/min at 80 kt over the ground are atan(1000 / (80 x 1852 / 0.3048 / 60)) = 7.04 degrees; beam toward 70
     * degrees true, with the entered variation of -4.00 degrees on 2026-01-01 that changes by 0.15 a year -3.94 and so 73.9 by compass.
     */
    @ParameterizedTest
    @EnumSource(Reports.Format.class)
    void theCardHasTheNumbersOfTheSetUpInTheSameBytes(Reports.Format format) throws ReportException, IOException {
        SetUpCard card = card(PaperSize.A4, Locale.ENGLISH, format);
        assertArrayEquals(card.bytes(), card(PaperSize.A4, Locale.ENGLISH, format).bytes());
        assertEquals(7.04, Math.toDegrees(Math.atan(1000 / (80 * 1852 / 0.3048 / 60))), 0.005);
        assertEquals(73.9, 70 + 4 - 0.15 * 151 / 365, 0.05);
        String text = format == Reports.Format.PDF ? Demo.pdfText(card.bytes()) : text(card);
        for (String expected : List.of("Set-up card", "Caution", "2026-06-01", "7\u00b002.4'", "26.72 m past the hover point",
                "73.9\u00b0 by compass (70.0\u00b0 true)", "ground", "Sight line", "lower edge of the red sector",
                "red | 6\u00b032.4' | green | 7\u00b032.4' | amber")) {
            assertTrue(text.contains(expected), expected + " is not in " + text);
        }
        Cautions.in(Locale.ENGLISH).forEach(caution -> assertTrue(text.contains(caution), caution));
    }

    /**
     * Held to 0.1 degrees of what the deck does, each edge moves by 6 minutes to both sides: of the red sector of 210 minutes 198 remain,
     * of the green one of 60 minutes 48.
     */
    @Test
    void theCardSaysWhatADeckLeavesOfTheSectors() throws ReportException {
        Helipad pad = Projects.helipad(aid).orElseThrow();
        pad.setFloating(true);
        pad.setDeckPitchDeg(2.0);
        pad.setDeckRollDeg(3.0);
        pad.setDeckHeadingDeg(1.0);
        aid.getEquipment().setStabilisedToDeg(0.1);
        clear();
        SetUpCard card = html();
        assertEquals("[]", reasons(card));
        assertTrue(text(card).contains("Stabilised: the beam still moves by 6.0' and turns by 1.00° to each side. However the deck moves "
                + "there remain: red 198.0' of 210.0' and green 48.0' of 60.0'."), text(card));
    }

    /**
     * A card that goes into the field is two pages at most, on every paper and in both languages. The variation is entered as the World
     * Magnetic Model of 2025 gives it there on that day, -2.46 degrees (its published coefficients), so that nothing stands against the
     * card. Carried toward 250 - -2.46 = 252 by compass, 26.7 m; the zero of the plate lies to the south, so that it reads 72 - 180 + 360 =
     * 252; 7.04 degrees are nearest to the mark 7.00; 55 Ah at 4.2 A last 13.1 h.
     */
    @ParameterizedTest
    @EnumSource(CardPaper.class)
    void theCardIsTwoPagesOfSteps(CardPaper paper) throws ReportException, IOException {
        clear();
        SetUpCard ready = html();
        assertTrue(ready.isReady(), reasons(ready));
        assertFalse(text(ready).contains(STOP));
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            SetUpCard card = SetUpCards.write(ProjectEvaluation.of(project, Optional.empty()), aid, DAY,
                    new ReportOptions(DAY.toString()).in(language), paper, Reports.Format.PDF);
            try (PDDocument document = Loader.loadPDF(card.bytes())) {
                assertEquals(2, document.getNumberOfPages(), language.toString());
                assertEquals(language.getLanguage(), document.getDocumentCatalog().getLanguage());
            }
            String text = Demo.pdfText(card.bytes()).replace('\u00a0', ' ').replace('\u2002', ' ');
            boolean german = language.equals(Locale.GERMAN);
            for (String expected : german ? List.of("252\u00b0 26,7 m", "Null auf 180\u00b0. Drehen auf 252\u00b0", "7,00\u00b0",
                    "Libelle in die Mitte", "13,1 h", "Aufgestellt von") : List.of("252\u00b0 26.7 m",
                            "Plate zero to 180\u00b0. Turn to 252\u00b0",
                            "7.00\u00b0", "Bubble in the middle", "All below the lower hair lower hair: lower edge of the red",
                            "22 to 28 V. Lasts at most 13.1 h", "Check again every 2 h", "Valid on 2026-06-01 only.",
                            "Obstacles as surveyed on 2026-05-12", "Set up by")) {
                assertTrue(text.contains(expected), expected + " is not in " + text);
            }
            int turn = text.indexOf(german ? "Drehen auf" : "Turn to");
            int level = text.indexOf(german ? "Libelle in die" : "Bubble in");
            int set = text.indexOf(german ? "Neigung einstellen" : "Set the slope");
            assertTrue(turn > 0 && turn < level && level < set, "in the order of the unit in hand");
        }
    }

    /**
     * Both units of a pair stand on every paper, in two pages: 31.397 m on and 3.048 m to either side they are 31.54 m away, 5.545 degrees
     * to either side of the landing direction of 100, with 1.50 + 0.05 x 151 / 365 degrees of variation 093 and 104 by compass; the low one
     * is set to 5.25 degrees and the high one to 6.75. The beam looks to 278 by compass, a plate with its zero to the north that counts
     * anticlockwise reads 82.
     */
    @ParameterizedTest
    @EnumSource(CardPaper.class)
    void bothUnitsOfAPairStandOnTheCard(CardPaper paper) throws ReportException, IOException {
        Project family = Demo.project("every-family");
        ApproachAid pair = Demo.aid(family, "Heliport pair");
        EquipmentType type = pair.getEquipment();
        type.setPlateZero(PlateZero.NORTH);
        type.setPlateSense(PlateSense.ANTICLOCKWISE);
        type.setPlateStepDeg(1.0);
        type.setSlopeScaleStepDeg(0.25);
        type.setLowerHair(SightHair.RED_LOWER_EDGE);
        type.setUpperHair(SightHair.SLOPE);
        type.setHandOrder(HandOrder.LEVEL_SET_TURN);
        AidEvaluation evaluation = ProjectEvaluation.of(family, Optional.empty()).aid(pair);
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Pictures pictures = new Pictures(false);
            CardDocument document = new CardDocument(evaluation, Optional.of(PortableSetUp.of(evaluation, DAY)), DAY, List.of(),
                    new ReportOptions(DAY.toString()).in(language), paper);
            byte[] bytes = PdfDocument.write(document.write(pictures), pictures, document.title(), DAY.toString());
            try (PDDocument pages = Loader.loadPDF(bytes)) {
                assertEquals(2, pages.getNumberOfPages(), language.toString());
            }
            String text = Demo.pdfText(bytes).replaceAll("[\\s\u00a0\u2002]+", " ").replace(',', '.');
            for (String expected : List.of("low 093\u00b0 31.5 m high 104\u00b0 31.5 m", "low 5.25\u00b0 high 6.75\u00b0", " 82\u00b0")) {
                assertTrue(text.contains(expected), expected + " is not in " + text);
            }
        }
    }

    /** The order of the hand is that of the unit. */
    @Test
    void theStepsFollowTheOrderOfTheUnit() throws ReportException {
        aid.getEquipment().setHandOrder(HandOrder.SET_LEVEL_TURN);
        clear();
        String text = text(html());
        assertTrue(text.indexOf("Set the slope") < text.indexOf("Bubble in") && text.indexOf("Bubble in") < text.indexOf("Turn to"), text);
    }

    /** Steps of 18 and values of 28 points at least, also under a template of one's own. */
    @Test
    void theTypeIsLarge() throws ReportException {
        clear();
        String markup = new String(html().bytes(), StandardCharsets.UTF_8);
        assertTrue(markup.contains("body.card p.step { font-size: 18pt !important;"), "steps");
        assertTrue(markup.contains("body.card p.value { font-size: 28pt !important;"), "values");
        assertEquals(8, markup.split("class=\"tick\"", -1).length - 1, "a box for each step");
        assertEquals(8, markup.split("<svg", -1).length - 2, "a picture for each step, and one of the signals");
    }

    /** The demo's entered variation of -3.94 degrees on the day is 1.48 from the model's -2.46, more than the 0.5 that may be. */
    @Test
    void aVariationOffTheModelKeepsTheCardFromUse() throws ReportException {
        clear();
        project.getAerodrome().getMagneticVariation().setVariationDeg(-4.0);
        SetUpCard card = html();
        assertFalse(card.isReady());
        assertTrue(reasons(card).contains("magnetic variation"), reasons(card));
        assertFalse(text(card).contains("Set up by"), "a card that is not for use is not signed");
    }

    /** Sectors from memory that nobody confirmed stand against the use of a card, whatever rules say. */
    @Test
    void unconfirmedSectorsKeepTheCardFromUse() throws ReportException {
        aid.getEquipment().getSectors().clear();
        project.getConfirmations().clear();
        SetUpCard card = html();
        assertFalse(card.isReady());
        String text = text(card);
        assertTrue(text.indexOf(STOP) < text.indexOf("Set-up card") || text.indexOf(STOP) < text.indexOf("Caution"), text);
        assertTrue(text.indexOf(STOP) > 0 && text.indexOf(STOP) < text.indexOf("Set the unit to"), text);
        assertTrue(reasons(card).contains("The edges of the sectors are not confirmed"), reasons(card));
        card.reasons().forEach(reason -> assertTrue(text.contains(reason.english().replaceAll("\\s+", " ")), reason.english()));
    }

    /** A rule about the aid that is not met keeps the card from use, also where the set-up itself has nothing against it. */
    @Test
    void aRuleThatIsNotMetKeepsTheCardFromUse() throws ReportException {
        aid.getUnits().get(0).setLensElevationM(aid.getUnits().get(0).getLensElevationM() + 30);
        SetUpCard card = html();
        assertFalse(card.isReady());
        assertTrue(reasons(card).startsWith("[not met: "), reasons(card));
        assertTrue(text(card).contains(STOP));
    }

    /** What cannot be evaluated keeps the card from use by itself: nothing else stands against one without a survey of its approach. */
    @Test
    void aRuleToBeClearedUpKeepsTheCardFromUse() throws ReportException {
        clear();
        assertTrue(html().isReady(), reasons(html()));
        ApproachHost elsewhere = Projects.hosts(project).stream().filter(host -> host != aid.eContainer()).findFirst().orElseThrow();
        project.getAerodrome().getObstacleSurveys().stream().map(ObstacleSurvey::getHosts).filter(hosts -> hosts.remove(aid.eContainer()))
                .forEach(hosts -> hosts.add(elsewhere));
        SetUpCard card = html();
        assertFalse(card.isReady());
        assertTrue(card.reasons().stream().map(reason -> reason.english()).allMatch(reason -> reason.startsWith("to clear up: ")
                || reason.startsWith("No obstacle survey reaches")), reasons(card));
        assertTrue(reasons(card).contains("OBS-07") && reasons(card).contains("BOX-09"), reasons(card));
        assertTrue(text(card).contains(STOP));
    }

    /** A rule that is met on a value which nobody confirmed keeps the card from use as well. */
    @Test
    void aValueThatNobodyConfirmedKeepsTheCardFromUse() throws ReportException {
        clear();
        project.getConfirmations().removeIf(confirmation -> "portable.supply-from-v".equals(confirmation.getValueKey()));
        SetUpCard card = html();
        assertFalse(card.isReady());
        assertTrue(reasons(card).startsWith("[to clear up: BOX-08"), reasons(card));
    }

    /** An obstacle of which nobody knows how high it stands keeps the card from use: nobody knows whether it is in the way. */
    @Test
    void anObstacleWithoutATopKeepsTheCardFromUse() throws ReportException {
        Obstacle shed = project.getAerodrome().getObstacles().stream().filter(obstacle -> "Heliport shed".equals(obstacle.getName()))
                .findFirst().orElseThrow();
        shed.setTopElevationM(null);
        shed.getPlaces().forEach(place -> place.setElevationM(null));
        SetUpCard card = html();
        assertFalse(card.isReady(), reasons(card));
        assertTrue(reasons(card).contains("Heliport shed"), reasons(card));
    }

    /** Levels near the axis of a pad are the ground of its unit; one that was changed since it was read back is to clear up. */
    @Test
    void aGroundLevelThatWasChangedKeepsTheCardFromUse() throws ReportException {
        clear();
        assertTrue(html().isReady(), reasons(html()));
        GroundLevel level = project.getAerodrome().getGroundLevels().get(0);
        level.getPlace().setElevationM(level.getPlace().getElevationM() + 0.001);
        assertFalse(html().isReady());
        assertTrue(reasons(html()).contains("(" + level.getId() + "), or its read-back, was changed since N. Example"), reasons(html()));
    }

    /** What is wrong with an indicator at the other end of the aerodrome says nothing about this unit. */
    @Test
    void aFaultOfAnotherAidIsNoReason() throws ReportException {
        String before = reasons(html());
        Demo.aid(project, "PAPI 27").getUnits().forEach(unit -> unit.setSettingDeg(unit.getSettingDeg() + 1));
        assertEquals(before, reasons(html()));
    }
}
