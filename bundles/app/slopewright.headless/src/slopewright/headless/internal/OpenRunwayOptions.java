package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import picocli.CommandLine.Option;

import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNumber;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.runways.OpenAirport;
import slopewright.exchange.runways.RunwayData;
import slopewright.exchange.runways.RunwayOffer;

/** A runway end from a file of open data, by the code of its airport. */
final class OpenRunwayOptions {
    /** What an indicator cannot be laid out without. */
    private static final Map<SiteNumber, String> NEEDED = Map.of(SiteNumber.ELEVATION, "elevation", SiteNumber.LENGTH, "usable length",
            SiteNumber.WIDTH, "usable width");

    @Option(names = "--runway-data", paramLabel = "FILE", description = "open runway data in a file of yours: an SQLite database with the "
            + "tables airports, runways and runway_ends, or a CSV file with a runway a line; nothing is fetched")
    private Path file;

    @Option(names = "--airport", paramLabel = "CODE", description = "the code of the airport in these data")
    private String airport;

    @Option(names = "--end", paramLabel = "TEXT", description = "the runway end; without it the ends are listed and nothing is written")
    private String end;

    @Option(names = "--licence", paramLabel = "TEXT", description = "licence of the data (default the first line of a file LICENSE beside "
            + "them or in the folder above)")
    private String licence;

    /** Returns the runway with the wanted end first; empty where nobody asks for open data. */
    Optional<KnownRunway> runway(LocalDate day) {
        if (file == null && airport == null && end == null && licence == null) {
            return Optional.empty();
        }
        if (file == null || airport == null) {
            throw new UsageException("open runway data need --runway-data with a file and --airport with a code");
        }
        try {
            RunwayData data = RunwayData.read(file);
            String terms = Optional.ofNullable(licence).or(data::licence).filter(text -> !text.isBlank()).orElseThrow(
                    () -> new UsageException("no licence lies beside " + file + "; say under which one you use the data with --licence"));
            OpenAirport found = data.find(airport).orElseThrow(() -> new InputException(file + ": holds no airport " + airport));
            return Optional.of(chosen(found, data.offers(found, terms.strip(), day)));
        } catch (ExchangeException e) {
            throw new InputException(e.getMessage());
        } catch (IOException e) {
            throw new InputException(file + ": cannot be read: " + e.getMessage());
        }
    }

    private KnownRunway chosen(OpenAirport found, List<RunwayOffer> offers) {
        if (offers.isEmpty()) {
            throw new InputException(file + ": says nothing about the runway ends of " + found.code() + " " + found.name());
        }
        List<RunwayOffer> asked = offers.stream().filter(offer -> isAsked(offer, end)).toList();
        Optional<RunwayOffer> usable = asked.stream().filter(offer -> offer.known().isPresent()).findFirst();
        if (usable.isPresent()) {
            return usable.get().known().get();
        }
        if (!asked.isEmpty()) {
            throw new InputException(file + ": " + found.code() + " " + end + " is not taken: " + asked.get(0).refused().orElseThrow()
                    .english());
        }
        List<String> lines = new ArrayList<>(List.of((end == null ? "say which end with --end; " : "there is no end " + end + "; ")
                + found.code() + " " + found.name() + " has"));
        offers.forEach(offer -> lines.add(offer.ident() + offer.refused().map(reason -> ": not taken, " + reason.english())
                .orElseGet(() -> described(offer.known().orElseThrow()))));
        throw new UsageException(lines.get(0) + " " + String.join("; ", lines.subList(1, lines.size())));
    }

    private static boolean isAsked(RunwayOffer offer, String wanted) {
        return wanted != null && (offer.ident().equalsIgnoreCase(wanted.strip())
                || offer.known().filter(known -> known.first().designator().equalsIgnoreCase(wanted.strip())).isPresent());
    }

    private static String described(KnownRunway known) {
        String length = known.lengthM().isPresent() ? String.format(Locale.ROOT, ", %.0f m long", known.lengthM().getAsDouble()) : "";
        String elevation = known.first().elevationM().isPresent() ? String.format(Locale.ROOT, ", threshold at %.1f m", known.first()
                .elevationM().getAsDouble()) : ", no elevation";
        return String.format(Locale.ROOT, ": to %.1f° true%s%s", known.first().bearingDeg(), length, elevation);
    }

    /** Refuses a site that lacks what an indicator cannot be laid out without, naming the option that says it. */
    static void demand(NewSite site) {
        for (SiteNumber number : List.of(SiteNumber.ELEVATION, SiteNumber.LENGTH, SiteNumber.WIDTH)) {
            if (site.number(number).isEmpty()) {
                throw new UsageException("the data have no " + NEEDED.get(number) + " of " + site.designator() + "; say it with --"
                        + number.key());
            }
        }
    }
}
