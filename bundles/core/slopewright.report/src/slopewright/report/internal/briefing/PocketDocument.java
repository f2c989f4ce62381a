package slopewright.report.internal.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import slopewright.drawing.landing.DirectionScene;
import slopewright.drawing.scene.PaperArea;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingWind;
import slopewright.evaluation.portable.BatteryEndurance;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.ApproachDirection;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.report.internal.template.PageFrame;
import slopewright.siting.SitingException;
import slopewright.siting.descent.DescentSlope;

/** Puts the pocket sheet together: slopes by speed and descent, clear directions, what a tilt does, how long the battery lasts. */
public final class PocketDocument {
    private static final int[] SPEEDS_KT = {80, 90, 100, 110, 120, 130, 140};
    private static final int[] DESCENTS_FTMIN = {400, 500, 600, 700, 800, 900, 1000};
    private static final double[] HEADWINDS_KT = {0, 10, 20};
    private static final double CHART_MM = 120;

    private final AidEvaluation aid;
    private final PortableSetUp found;
    private final Optional<LandingWind> wind;
    private final ReportOptions options;
    private final ReportWords words;
    private final Paper paper;
    private final Optional<LandingDirections> directions;

    /**
     * Starts a sheet.
     *
     * @param aid     the evaluation of the aid
     * @param found   its set-up
     * @param wind    the wind at the site, empty where none was given
     * @param reasons what stands against the use of the unit; empty where nothing does
     * @param options date, paper, template and language
     */
    public PocketDocument(AidEvaluation aid, PortableSetUp found, Optional<LandingWind> wind, List<Message> reasons,
            ReportOptions options) {
        this.aid = aid;
        this.found = found;
        this.wind = wind;
        this.options = options;
        words = new ReportWords(options.renderer());
        directions = aid.host() instanceof ApproachDirection ? Optional.of(LandingDirections.of(aid)) : Optional.empty();
        paper = new Paper(words, words.say("pocket.title"), words.say("card.label", found.label(),
                Words.name(found.date().toString())), reasons, MadeFrom.of(aid.project(), aid.rules()));
        directions.ifPresent(all -> paper.add(directions(all)));
        for (double headwind : HEADWINDS_KT) {
            paper.add(slopes(headwind));
        }
        paper.add(tilt()).add(battery());
    }

    /** Returns its title. */
    public String title() {
        return words.say("pocket.title-of", found.label());
    }

    /** Returns the pages of paper. */
    public String page(Pictures pictures) throws ReportException {
        return paper.page(new PageFrame(aid.project(), options, aid.rules()), html -> chart(html, pictures));
    }

    private double variationDeg() {
        return found.azimuth().variation().variationDeg();
    }

    private void chart(Html html, Pictures pictures) {
        directions.ifPresent(all -> html.open("div class=\"drawing\"").raw(pictures.add(DirectionScene.of(all,
                new DirectionScene.Told(title(), words.renderer(), Optional.of(new DirectionScene.Chosen(found.azimuth().landingTrueDeg(),
                        found.siting().slopeDeg())), wind, OptionalDouble.of(variationDeg())),
                new PaperArea(CHART_MM, 0, 1, 0)), CHART_MM, CHART_MM)).close("div"));
    }

    private Part directions(LandingDirections all) {
        List<String> lines = new ArrayList<>(words.render(all.sentences(variationDeg())));
        lines.add(words.say("pocket.by-compass", Words.degrees(variationDeg())));
        lines.addAll(words.render(all.notes()));
        return new Part(words.say("pocket.directions"), List.of(), List.of(), lines);
    }

    private Part slopes(double headwindKt) {
        List<String> heads = new ArrayList<>(List.of(words.say("pocket.speed")));
        IntStream.of(DESCENTS_FTMIN).forEach(descent -> heads.add(descent + " ft/min"));
        List<List<String>> rows = IntStream.of(SPEEDS_KT).mapToObj(speed -> {
            List<String> row = new ArrayList<>(List.of(speed + " kt"));
            IntStream.of(DESCENTS_FTMIN).forEach(descent -> row.add(slope(speed, headwindKt, descent)));
            return row;
        }).toList();
        return new Part(headwindKt == 0 ? words.say("pocket.still-air") : words.say("pocket.headwind",
                Words.quantity(headwindKt, Notation.KNOTS)), heads, rows, List.of());
    }

    private String slope(int speedKt, double headwindKt, int descentFtMin) {
        try {
            OptionalDouble against = headwindKt == 0 ? OptionalDouble.empty() : OptionalDouble.of(headwindKt);
            return words.fixed(DescentSlope.ofAirSpeed(speedKt, against, descentFtMin).slopeDeg(), 1) + "°";
        } catch (SitingException e) {
            return "-";
        }
    }

    private Part tilt() {
        List<List<String>> rows = found.levelling().heights().stream().map(height -> List.of(words.fixed(height.distanceM(), 0) + " m",
                words.metres(height.heightM()), words.metres(-height.downM()), words.metres(height.upM()))).toList();
        return new Part(words.say("pocket.tilt", Words.min(found.levelling().minutes())), List.of(words.say("pocket.distance"),
                words.say("pocket.path"), words.say("pocket.down"), words.say("pocket.up")), rows, List.of());
    }

    private Part battery() {
        if (found.battery().isEmpty()) {
            return new Part(words.say("pocket.battery"), List.of(), List.of(), List.of(words.say("pocket.no-battery")));
        }
        BatteryEndurance battery = found.battery().get();
        List<List<String>> rows = new ArrayList<>();
        for (BatteryEndurance.Level step : battery.levels()) {
            rows.add(List.of(words.say("pocket.step", Words.count(step.step()), Words.percent(step.powerPercent())),
                    words.say("pocket.hours", Words.number(Math.floor(step.hours() * 10) / 10))));
        }
        if (rows.isEmpty()) {
            rows.add(List.of(words.say("pocket.full"), words.say("pocket.hours",
                    Words.number(Math.floor(battery.leastHours() * 10) / 10))));
        }
        return new Part(words.say("pocket.battery"), List.of(), rows, words.render(battery.notes()));
    }
}
