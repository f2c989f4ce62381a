package slopewright.headless.internal;

import java.nio.file.Path;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves one siting. */
@CommandLine.Command(name = "site", sortOptions = false,
        description = "Solve one siting, from a file's runway end or helipad, or from flags alone. Lengths take the suffix ft. Exits 1 "
                + "where something of the place in the file is not met.")
final class SiteCommand extends Command {

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--end", paramLabel = "ID", description = "runway end in the file, by id or designator")
    private String end;

    @Option(names = "--helipad", paramLabel = "ID", description = "helipad or approach direction in the file")
    private String helipad;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    void extend(CommandSpec target) {
        SitingFlags.addTo(target);
    }

    @Override
    public Integer call() {
        SitingSource source = SitingSource.of(spec(), new SitingSource.Names(file, null, end, helipad));
        source.tell(streams(), "site");
        if (json) {
            source.printJson(SitingOutput.json(source), streams().out);
        } else {
            SitingOutput.print(source, streams());
        }
        return source.isAtBrokenPlace() ? ExitCodes.FINDINGS : ExitCodes.OK;
    }
}
