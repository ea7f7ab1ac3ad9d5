package org.wadeplan.cli;

import org.wadeplan.planner.pack.ShareKind;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** The tree of commands. */
final class Commands {

    private Commands() {}

    static CommandLine all(Console console) {
        CommandLine line = new CommandLine(new Wadeplan())
                .addSubcommand(new DemoCommand(console))
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new CommandLine(new ReachGroup())
                        .addSubcommand(new ReachLayCommand(console))
                        .addSubcommand(new ReachSearchCommand(console))
                        .addSubcommand(new ReachDrawCommand(console)))
                .addSubcommand(methods(console))
                .addSubcommand(new CommandLine(new EffortGroup())
                        .addSubcommand(new EffortPlanCommand(console))
                        .addSubcommand(new EffortDetectCommand(console))
                        .addSubcommand(new EffortSumsCommand(console)))
                .addSubcommand(new CommandLine(new KitGroup())
                        .addSubcommand(new KitListCommand(console))
                        .addSubcommand(new KitTickCommand(console)))
                .addSubcommand(decontamination(console))
                .addSubcommand(new CommandLine(new WeekGroup())
                        .addSubcommand(new WeekPlanCommand(console))
                        .addSubcommand(new WeekVerifyCommand(console)))
                .addSubcommand(new CommandLine(new HazardGroup()).addSubcommand(new HazardBriefCommand(console)))
                .addSubcommand(new PackCommand(console))
                .addSubcommand(new CommandLine(new ShareGroup())
                        .addSubcommand(
                                "gpx",
                                share(console, ShareKind.GPX, "reaches, stakes and access points for a handheld"))
                        .addSubcommand("ics", share(console, ShareKind.ICS, "the crews' days as a calendar"))
                        .addSubcommand("gpkg", share(console, ShareKind.GPKG, "reaches and stakes as a GeoPackage"))
                        .addSubcommand("geojson", share(console, ShareKind.GEOJSON, "reaches and stakes as GeoJSON")))
                .addSubcommand(new WindowCommand(console))
                .addSubcommand(new HelpCommand());
        Values.register(line);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        declaredOrder(line);
        line.setUsageHelpLongOptionsMaxWidth(30);
        line.setUsageHelpWidth(100);
        return line;
    }

    private static CommandLine decontamination(Console console) {
        return new CommandLine(new DeconGroup())
                .addSubcommand(new DeconStepsCommand(console))
                .addSubcommand(new DeconEvidenceCommand(console))
                .addSubcommand(new DeconExposureCommand(console))
                .addSubcommand(new DeconTraceCommand(console))
                .addSubcommand(new DeconReleaseCommand(console));
    }

    private static CommandLine methods(Console console) {
        return new CommandLine(new MethodGroup())
                .addSubcommand(new MethodDecideCommand(console))
                .addSubcommand(new MethodAuditCommand(console))
                .addSubcommand(new MethodTryCommand(console))
                .addSubcommand(new MethodCompareCommand(console))
                .addSubcommand(new MethodMarginCommand(console))
                .addSubcommand(new MethodConvertCommand(console));
    }

    /** Options as declared: their alphabet would be that of the machine's language. */
    private static void declaredOrder(CommandLine line) {
        line.getCommandSpec().usageMessage().sortOptions(false).sortSynopsis(false);
        line.getSubcommands().values().forEach(Commands::declaredOrder);
    }

    private static CommandLine share(Console console, ShareKind kind, String what) {
        CommandLine line = new CommandLine(new ShareCommand(console, kind));
        line.getCommandSpec().usageMessage().description("write " + what);
        return line;
    }

    @Command(
            name = "wadeplan",
            mixinStandardHelpOptions = true,
            versionProvider = ProgramVersion.class,
            synopsisSubcommandLabel = "COMMAND",
            description = {
                "Plans rounds of stream-fish surveys: reaches, methods, kit, decontamination, the week, hazards, and"
                        + " the pack to print.",
                "It helps people decide and never calls a site safe: it says what it found. Your agency's code and"
                        + " licensed, trained people come first."
            },
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:fine",
                "1:findings at error level",
                "2:wrong use",
                "3:unreadable or invalid input",
                "4:no feasible plan",
                "5:internal fault"
            },
            footerHeading = "%nStart here:%n",
            footer = {"  wadeplan demo my-round", "  wadeplan pack my-round --out pack"})
    private static final class Wadeplan extends Group {}

    @Command(name = "reach", mixinStandardHelpOptions = true, description = "where the reaches and their stakes lie")
    private static final class ReachGroup extends Group {}

    @Command(
            name = "method",
            mixinStandardHelpOptions = true,
            description = "which method fits each site, and by which rule")
    private static final class MethodGroup extends Group {}

    @Command(
            name = "effort",
            mixinStandardHelpOptions = true,
            description = "how long each visit takes, which settings to start from, how many packs, what it meets")
    private static final class EffortGroup extends Group {}

    @Command(
            name = "kit",
            mixinStandardHelpOptions = true,
            description = "what each crew loads, what is short, what is in")
    private static final class KitGroup extends Group {}

    @Command(
            name = "decon",
            mixinStandardHelpOptions = true,
            description = "what it takes to move kit between waters without carrying a pest")
    private static final class DeconGroup extends Group {}

    @Command(name = "week", mixinStandardHelpOptions = true, description = "who goes where when")
    private static final class WeekGroup extends Group {}

    @Command(
            name = "share",
            mixinStandardHelpOptions = true,
            description = "write one file for other programs: GPX, calendar, GeoPackage or GeoJSON")
    private static final class ShareGroup extends Group {}

    @Command(
            name = "hazard",
            mixinStandardHelpOptions = true,
            description = "what can hurt people, and the limits at which work stops")
    private static final class HazardGroup extends Group {}
}
