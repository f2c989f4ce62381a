package slopewright.report.internal.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.landing.PilotBriefing;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.util.Projects;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.template.PageFrame;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.LightRhythm;
import slopewright.siting.SeenUnit;

/** Puts the pilot's briefing together. */
public final class BriefingDocument {
    private final AidEvaluation aid;
    private final PilotBriefing found;
    private final ReportOptions options;
    private final ReportWords words;
    private final Paper paper;

    /**
     * Starts a briefing.
     *
     * @param aid     the evaluation of the aid
     * @param found   what the pilot is told
     * @param reasons what stands against the use of the aid; empty where nothing does
     * @param options date, paper, template and language
     */
    public BriefingDocument(AidEvaluation aid, PilotBriefing found, List<Message> reasons, ReportOptions options) {
        this.aid = aid;
        this.found = found;
        this.options = options;
        words = new ReportWords(options.renderer());
        paper = new Paper(words, words.say("briefing.title"), words.say("card.label", found.label(),
                Words.name(found.date().toString())), reasons, MadeFrom.of(aid.project(), aid.rules()));
        paper.add(landing()).add(seen()).add(heights()).add(obstacles());
    }

    /** Returns its title. */
    public String title() {
        return words.say("briefing.title-of", found.label());
    }

    /** Returns the pages of paper. */
    public String page() throws ReportException {
        return paper.page(new PageFrame(aid.project(), options, aid.rules()), none -> {
            // words alone
        });
    }

    /** Returns one page for a small screen. */
    public String phone() {
        return paper.phone(options);
    }

    /** Returns plain text to be copied. */
    public String text() {
        return paper.text();
    }

    private String write(Argument argument) {
        return words.renderer().write(argument);
    }

    private Part landing() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words.say("briefing.type"), words.family(aid.family(), aid.aid().getFamilyKey())));
        rows.add(List.of(words.say("briefing.direction"), words.say("briefing.direction-is",
                Words.quantity(found.azimuth().landingMagneticDeg(), Notation.BEARING),
                Words.quantity(found.azimuth().landingTrueDeg(), Notation.BEARING))));
        rows.add(List.of(words.say("briefing.slope"), words.angle(found.siting().slopeDeg())));
        rows.add(List.of(words.say("briefing.range"), words.say("briefing.range-is", range(found.range().dayM()),
                range(found.range().nightM()))));
        return new Part(words.say("briefing.landing"), List.of(), rows, words.render(found.range().notes()));
    }

    private Argument range(OptionalDouble metres) {
        return metres.isPresent() ? Words.km(metres.getAsDouble()) : Message.of("report.briefing.not-known");
    }

    private Part seen() {
        List<List<String>> rows = new ArrayList<>();
        int last = found.bands().size() - 1;
        for (int i = 0; i <= last; i++) {
            PilotBriefing.Seen seen = found.bands().get(i);
            String angles = i == 0 ? words.say("briefing.over", Words.deg(seen.band().fromDeg()))
                    : i == last ? words.say("briefing.under", Words.deg(seen.band().toDeg()))
                            : words.say("briefing.between", Words.deg(seen.band().fromDeg()), Words.deg(seen.band().toDeg()));
            rows.add(List.of(String.join(", ", seen.band().seen().meanings().entrySet().stream().map(path -> (path.getKey().isEmpty() ? ""
                    : words.term("path." + path.getKey()) + ": ") + words.term("meaning", path.getValue())).toList()), lights(seen),
                    angles));
        }
        List<String> lines = found.bands().stream().flatMap(seen -> seen.band().seen().remarks().stream()).distinct().map(words::render)
                .toList();
        return new Part(words.say("briefing.seen"), List.of(words.say("briefing.where"), words.say("briefing.lights"),
                words.say("briefing.angle")), rows, lines);
    }

    /** Names each light in words, with its rhythm; units that show the same are said once. */
    private String lights(PilotBriefing.Seen seen) {
        List<SeenUnit> units = seen.band().seen().seen();
        List<String> each = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            each.add(light(units.get(i).light(), seen.rhythms().get(i)));
        }
        if (each.stream().distinct().count() == 1) {
            return each.get(0);
        }
        List<String> named = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            named.add(units.get(i).unit().id() + " " + each.get(i));
        }
        return String.join(", ", named);
    }

    private String light(Light light, LightRhythm rhythm) {
        if (light.form() == LightForm.OFF) {
            return words.term("light.off");
        }
        String colour = words.term("colour", light.colour());
        if (light.form() == LightForm.STEADY) {
            return words.say("briefing.steady", Words.name(colour));
        }
        String form = words.say("card." + light.form().key(), Words.name(colour));
        return rhythm.isTimed() && !rhythm.isAssumed()
                ? words.say("briefing.rhythm", Words.name(form), Words.number(rhythm.rateHz())) : form;
    }

    private Part heights() {
        List<List<String>> rows = found.heights().stream().map(height -> List.of(words.plain(height.distanceNm()) + " NM",
                words.fixed(Lengths.metresToFeet(height.heightM()), 0) + " ft", words.fixed(height.heightM(), 0) + " m",
                words.fixed(Lengths.metresToFeet(height.altitudeM()), 0) + " ft")).toList();
        boolean pad = Projects.helipad(aid.host()).isPresent();
        return new Part(words.say("briefing.heights"), List.of(words.say(pad ? "briefing.before-pad" : "briefing.before-threshold"),
                words.say("briefing.height"), words.say("briefing.height-m"), words.say("briefing.altitude")), rows, List.of());
    }

    /** What stands above the surface is never said to lie below it. */
    private String margin(double metres) {
        return metres < 0 ? words.say("briefing.above", Words.m(-metres)) : write(Words.m(metres));
    }

    private Part obstacles() {
        List<List<String>> rows = found.obstacles().stream().map(obstacle -> List.of(obstacle.label(),
                write(Words.wholeM(-obstacle.worst().point().alongM())), margin(obstacle.marginM()))).toList();
        List<String> lines = new ArrayList<>();
        aid.obstacles().reason().ifPresent(reason -> lines.add(words.say("briefing.no-surface", reason)));
        aid.obstacles().value().ifPresent(compared -> {
            if (compared.isUnsurveyed()) {
                lines.add(words.say("briefing.no-entry"));
            } else if (rows.isEmpty()) {
                lines.add(words.say("briefing.no-obstacle"));
            }
            compared.uncompared().forEach(uncompared -> lines.add(words.say("briefing.no-surface", uncompared.reason())));
        });
        return new Part(words.say("briefing.obstacles"), List.of(words.say("briefing.obstacle"), words.say("briefing.before"),
                words.say("briefing.margin")), rows, lines);
    }
}
