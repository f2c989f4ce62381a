package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.site.FurtherPad;
import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNames;
import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.SiteTemplate;
import slopewright.evaluation.site.SiteText;
import slopewright.evaluation.site.UnitKind;
import slopewright.geometry.Decimals;
import slopewright.geometry.Lengths;
import slopewright.messages.MessageRenderer;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/** Begins a project: a site and a first layout, as the wizard of the window does. */
@CommandLine.Command(name = "new", sortOptions = false,
        description = "Begin a project with a site and a first layout. What a template only assumes stands in the remarks of each element; "
                + "what it cannot know is missing, and check asks for it.")
final class NewCommand extends Command {
    private static final String RUNWAY_FAMILY = "four-unit-row";
    private static final String PAD_FAMILY = "heliport-sector";
    private static final int PLACE_NUMBERS = 3;
    private static final int FULL_DEG = 360;
    private static final int CODES = 4;

    @Option(names = "--template", paramLabel = "KEY", description = "the site to start from: ${COMPLETION-CANDIDATES}",
            completionCandidates = TemplateKeys.class)
    private String template;

    @Option(names = "--kind", paramLabel = "KEY", description = "kind of portable unit, a sample to be edited: ${COMPLETION-CANDIDATES}",
            completionCandidates = KindKeys.class)
    private String kind;

    @Option(names = "--family", paramLabel = "KEY", description = "family of the indicator (default that of the kind or template)")
    private String family;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set, with its edition after a colon where not the default")
    private String ruleSet;

    @Option(names = "--name", paramLabel = "NAME", description = "what the site is called (default the name in the open runway data)")
    private String name;

    @Option(names = "--pad", description = "without a template: a helipad instead of a runway")
    private boolean pad;

    @Option(names = "--designator", paramLabel = "TEXT", description = "designator of the runway end or first landing direction")
    private String designator;

    @Option(names = "--bearing-deg", paramLabel = "DEG", split = ",", converter = NumberWord.class,
            description = "true landing direction; several at a helipad, parted by commas")
    private List<Double> bearings = new ArrayList<>();

    @Option(names = "--further-pad", paramLabel = "NAME=E,N,M,DEG,...",
            description = "a further helipad: its middle in metres east and north of the first, its elevation, its landing directions")
    private Map<String, String> furtherPads = new TreeMap<>();

    @Option(names = "--code", paramLabel = "N", description = "code number of the runway, 1 to 4")
    private Integer code;

    @Option(names = "--author", paramLabel = "NAME", description = "who begins the project")
    private String author;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class, description = "day of the project (default today)")
    private LocalDate date;

    @Option(names = "--vertical-datum", paramLabel = "TEXT", description = "to what elevations refer")
    private String verticalDatum;

    @Option(names = "--survey-source", paramLabel = "TEXT", description = "where the survey of what stands round the pad comes from")
    private String surveySource;

    @Option(names = "--survey-date", paramLabel = "DAY", converter = DateWord.class, description = "its day")
    private LocalDate surveyDate;

    @Option(names = "--variation-source", paramLabel = "TEXT", description = "where the magnetic variation stands")
    private String variationSource;

    @Option(names = "--variation-date", paramLabel = "DAY", converter = DateWord.class, description = "the day for which it stands there")
    private LocalDate variationDate;

    @Mixin
    private OpenRunwayOptions open;

    @Mixin
    private LanguageOption language;

    @Mixin
    private OutputOptions output;

    /** The keys of the templates. */
    static final class TemplateKeys extends ArrayList<String> {
        private static final long serialVersionUID = 1;

        TemplateKeys() {
            super(Stream.of(SiteTemplate.values()).map(SiteTemplate::key).toList());
        }
    }

    /** The keys of the kinds of unit. */
    static final class KindKeys extends ArrayList<String> {
        private static final long serialVersionUID = 1;

        KindKeys() {
            super(Stream.of(UnitKind.values()).map(UnitKind::key).toList());
        }
    }

    @Override
    void extend(CommandSpec target) {
        for (SiteNumber number : SiteNumber.values()) {
            if (number != SiteNumber.BEARING) {
                String unit = number.key().substring(number.key().lastIndexOf('-') + 1).toUpperCase(Locale.ROOT);
                target.addOption(OptionSpec.builder("--" + number.key()).type(Double.class).arity("1").paramLabel("FTMIN".equals(unit)
                        ? "FT/MIN" : unit).description(MessageRenderer.of(Locale.ENGLISH).write(number.term()))
                        .converters(number.isLength() ? new NumberWord.Length() : new NumberWord()).build());
            }
        }
    }

    @Override
    public Integer call() {
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        NewSite site = site();
        String key = Optional.ofNullable(family).or(site::familyKey).orElse(site.isHelipad() ? PAD_FAMILY : RUNWAY_FAMILY);
        ProjectFiles.family(key);
        MessageRenderer words = MessageRenderer.of(language.language());
        Project project = site.laidOut(SiteNames.in(words::render, site.isHelipad() ? site.designator() : site.runwayDesignator()), key);
        output.write(project);
        tell(project);
        return ExitCodes.OK;
    }

    private NewSite site() {
        NewSite site = new NewSite(Optional.ofNullable(ruleSet).orElse(ProjectRules.DEFAULT));
        if (template != null) {
            site.start(SiteTemplate.find(template).orElseThrow(() -> new UsageException("there is no template '" + template
                    + "'; known are " + String.join(", ", new TemplateKeys()))));
        } else {
            site.setHelipad(pad || kind != null);
        }
        RuleSet rules = ProjectFiles.rules(Optional.ofNullable(ruleSet).or(() -> Optional.of(site.ruleSet())));
        site.setRuleSet(rules.key() + ":" + rules.edition());
        if (kind != null) {
            site.setKind(UnitKind.find(kind).orElseThrow(() -> new UsageException("there is no kind of unit '" + kind + "'; known are "
                    + String.join(", ", new KindKeys()))));
        }
        LocalDate day = date == null ? LocalDate.now() : date;
        Optional<KnownRunway> known = open.runway(day);
        known.ifPresent(runway -> taken(site, runway));
        if (name == null && known.isEmpty()) {
            throw new UsageException("a site needs a --name");
        }
        site.setName(Optional.ofNullable(name).orElseGet(site::name));
        site.setGroupName(site.name());
        if (code != null && (code < 1 || code > CODES)) {
            throw new UsageException("--code must lie between 1 and " + CODES);
        }
        site.setCode(code == null ? site.code() : code);
        for (SiteNumber number : SiteNumber.values()) {
            Double given = number == SiteNumber.BEARING ? null : spec().commandLine().getParseResult().matchedOptionValue("--" + number
                    .key(), null);
            if (given != null) {
                site.set(number, OptionalDouble.of(checked(number, given)));
            }
        }
        if (known.isEmpty()) {
            directions(site);
        } else {
            OpenRunwayOptions.demand(site);
        }
        text(site, SiteText.AUTHOR, author);
        text(site, SiteText.DATE, String.valueOf(day));
        text(site, SiteText.VERTICAL_DATUM, verticalDatum);
        text(site, SiteText.SURVEY_SOURCE, surveySource);
        text(site, SiteText.SURVEY_DATE, surveyDate == null ? null : surveyDate.toString());
        text(site, SiteText.VARIATION_SOURCE, variationSource);
        text(site, SiteText.VARIATION_DATE, variationDate == null ? null : variationDate.toString());
        if (site.number(SiteNumber.LATITUDE).isPresent() != site.number(SiteNumber.LONGITUDE).isPresent()) {
            throw new UsageException("a place needs both --latitude-deg and --longitude-deg, or neither on a plane of its own");
        }
        return site;
    }

    private void taken(NewSite site, KnownRunway runway) {
        if (site.isHelipad() || designator != null || !bearings.isEmpty() || !furtherPads.isEmpty()) {
            throw new UsageException("open runway data say what the runway is; they go with no helipad, --designator or --bearing-deg");
        }
        site.start(runway);
    }

    private void directions(NewSite site) {
        if (!bearings.isEmpty()) {
            site.set(SiteNumber.BEARING, OptionalDouble.of(checked(SiteNumber.BEARING, bearings.get(0))));
        }
        double first = site.number(SiteNumber.BEARING).orElse(0);
        site.setDesignator(Optional.ofNullable(designator).orElse(site.isHelipad() ? String.format(Locale.ROOT, "H-%03d",
                Math.round(first) % FULL_DEG) : String.format(Locale.ROOT, "%02d", runwayNumber(first))));
        if (!site.isHelipad() && (bearings.size() > 1 || !furtherPads.isEmpty())) {
            throw new UsageException("a runway begins with one direction; several, and further pads, are of helipads");
        }
        bearings.stream().skip(1).forEach(deg -> site.furtherBearings().add(checked(SiteNumber.BEARING, deg)));
        furtherPads.forEach((called, numbers) -> site.furtherPads().add(further(called, numbers)));
    }

    private static long runwayNumber(double bearingDeg) {
        long tens = Math.round(bearingDeg / 10) % 36;
        return tens == 0 ? 36 : tens;
    }

    private static FurtherPad further(String called, String numbers) {
        List<Double> read = new ArrayList<>();
        try {
            for (String number : numbers.split(",")) {
                read.add(read.size() < PLACE_NUMBERS ? Lengths.parse(number) : Decimals.parse(number));
            }
        } catch (IllegalArgumentException e) {
            throw new UsageException("--further-pad " + called + ": " + e.getMessage());
        }
        if (read.size() <= PLACE_NUMBERS) {
            throw new UsageException("--further-pad " + called + ": needs metres east, metres north, elevation and a landing direction");
        }
        read.stream().skip(PLACE_NUMBERS).forEach(deg -> checked(SiteNumber.BEARING, deg));
        return new FurtherPad(called, read.get(0), read.get(1), checked(SiteNumber.ELEVATION, read.get(2)), read.subList(PLACE_NUMBERS,
                read.size()));
    }

    private static double checked(SiteNumber number, double value) {
        if (!(value >= number.min() && value <= number.max())) {
            throw new UsageException(String.format(Locale.ROOT, "--%s must lie between %.1f and %.1f", number.key(), number.min(),
                    number.max()));
        }
        return value;
    }

    private static void text(NewSite site, SiteText text, String value) {
        if (value != null) {
            site.set(text, value);
        }
    }

    private void tell(Project project) {
        Projects.aids(project).forEach(aid -> streams().sayf("%s: %s, %s units, slope %.2f°", aid.getId(), Projects.path(aid),
                aid.getUnits().size(), aid.getSlopeDeg()));
        project.getAerodrome().eAllContents().forEachRemaining(element -> {
            if (element instanceof Named named && named.getRemarks() != null) {
                streams().sayf("%s %s: %s", named.getId(), named.getName(), named.getRemarks());
            }
        });
    }
}
