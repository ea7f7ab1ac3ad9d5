package org.wadeplan.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Documents that point at classes go stale quietly; this makes it loud. */
class DocumentLinksTest {

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)");

    @Test
    void everyRelativeLinkLeadsSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        for (Path page : pages()) {
            Matcher matcher = LINK.matcher(Files.readString(page));
            while (matcher.find()) {
                String target = matcher.group(1);
                if (target.startsWith("http")) {
                    continue;
                }
                links++;
                if (!Files.exists(page.resolveSibling(target))) {
                    broken.add(ProjectFolder.ROOT.relativize(page) + " -> " + target);
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(links).as("links that were followed").isGreaterThan(40);
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> docs = Files.walk(ProjectFolder.ROOT.resolve("docs"))) {
            List<Path> pages =
                    new ArrayList<>(docs.filter(file -> file.toString().endsWith(".md"))
                            .sorted()
                            .toList());
            pages.add(ProjectFolder.ROOT.resolve("README.md"));
            pages.add(ProjectFolder.ROOT.resolve("DEVELOPERS.md"));
            return pages;
        }
    }
}
