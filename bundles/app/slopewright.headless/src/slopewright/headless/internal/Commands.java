package slopewright.headless.internal;

import java.util.List;

/** The commands that there are. A call makes the one that it names, for making all of them takes longer than many a command. */
final class Commands {

    /** The words that call them, in the order in which help lists them. */
    static final List<String> NAMES = List.of("new", "place", "enter", "check", "site", "signal", "compare", "compare-rule-sets",
            "compare-versions", "surface", "sweep", "view", "terrain", "portable", "directions", "take", "sight", "tolerance", "variation",
            "report", "draw", "schedule", "card", "briefing", "pocket", "commission", "families", "rules", "rule-sets", "export", "import",
            "text", "book", "read-back", "review", "handover", "help", "completion", "manual");

    private Commands() {
    }

    /**
     * Makes a command.
     *
     * @throws IllegalArgumentException where there is none of that name
     */
    static Command make(String name) {
        return switch (name) {
            case "new" -> new NewCommand();
            case "place" -> new PlaceCommand();
            case "enter" -> new EnterCommand();
            case "check" -> new CheckCommand();
            case "site" -> new SiteCommand();
            case "signal" -> new SignalCommand();
            case "compare" -> new CompareCommand();
            case "compare-rule-sets" -> new CompareRuleSetsCommand();
            case "compare-versions" -> new CompareVersionsCommand();
            case "surface" -> new SurfaceCommand();
            case "sweep" -> new SweepCommand();
            case "view" -> new ViewCommand();
            case "terrain" -> new TerrainCommand();
            case "portable" -> new PortableCommand();
            case "directions" -> new DirectionsCommand();
            case "take" -> new TakeCommand();
            case "sight" -> new SightCommand();
            case "tolerance" -> new ToleranceCommand();
            case "variation" -> new VariationCommand();
            case "report" -> new ReportCommand();
            case "draw" -> new DrawCommand();
            case "schedule" -> new ScheduleCommand();
            case "card" -> new CardCommand();
            case "briefing" -> new BriefingCommand();
            case "pocket" -> new PocketCommand();
            case "commission" -> new CommissioningCommand();
            case "families" -> new FamiliesCommand();
            case "rules" -> new RulesCommand();
            case "rule-sets" -> new RuleSetsCommand();
            case "export" -> new ExportCommand();
            case "import" -> new ImportCommand();
            case "text" -> new TextCommand();
            case "book" -> new BookCommand();
            case "read-back" -> new ReadBackCommand();
            case "review" -> new ReviewCommand();
            case "handover" -> new HandoverCommand();
            case "help" -> new HelpCommand();
            case "completion" -> new CompletionCommand();
            case "manual" -> new ManualCommand();
            default -> throw new IllegalArgumentException(name);
        };
    }
}
