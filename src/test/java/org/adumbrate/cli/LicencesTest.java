package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** The list of licences is that of the libraries that the program is made of, as the build resolved them. */
class LicencesTest {
    private static final Pattern ROW = Pattern.compile("(?m)^([a-z0-9.-]+:[a-z0-9_-]+) +(\\d\\S*) +(\\S.*)$");

    /** What a row says. */
    private record Row(String version, String licence) {}

    private static Map<String, Row> listed() {
        Map<String, Row> rows = new LinkedHashMap<>();
        ROW.matcher(HelpTopics.text("licences"))
                .results()
                .forEach(row -> rows.put(row.group(1), new Row(row.group(2), row.group(3))));
        return rows;
    }

    /** The jars that are resolved: group and artifact, and the jar. */
    private static Map<String, Path> jars() {
        Map<String, Path> jars = new LinkedHashMap<>();
        for (String entry :
                System.getProperty("java.class.path").split(Pattern.quote(System.getProperty("path.separator")), -1)) {
            Path jar = Path.of(entry).toAbsolutePath();
            if (entry.endsWith(".jar") && jar.getNameCount() > 4) {
                String artifact = jar.getParent().getParent().getFileName().toString();
                String folders =
                        jar.getParent().getParent().getParent().toString().replace('\\', '/');
                jars.put(folders.replace('/', '.') + ":" + artifact, jar);
            }
        }
        return jars;
    }

    private static Path resolved(Map<String, Path> jars, String module) {
        return jars.entrySet().stream()
                .filter(jar -> jar.getKey().endsWith("." + module))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }

    private static Element xml(Path file) throws IOException {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    private static List<Element> children(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child && child.getTagName().equals(name)) {
                found.add(child);
            }
        }
        return found;
    }

    private static String text(Element parent, String name) {
        List<Element> found = children(parent, name);
        return found.isEmpty() ? "" : found.get(0).getTextContent().trim();
    }

    /** What a project file, or one that it inherits from, names for running. */
    private static List<String> needed(Path pom) throws IOException {
        List<String> modules = new ArrayList<>();
        Element project = xml(pom);
        List<Element> parents = children(project, "parent");
        String group = text(project, "groupId");
        if (!parents.isEmpty()) {
            Element parent = parents.get(0);
            group = group.isEmpty() ? text(parent, "groupId") : group;
            Path repository = pom;
            for (int up = text(project, "groupId").isEmpty() ? group.split("\\.", -1).length + 3 : 0; up > 0; up--) {
                repository = repository.getParent();
            }
            Path inherited = repository
                    .resolve(text(parent, "groupId").replace('.', '/'))
                    .resolve(text(parent, "artifactId"))
                    .resolve(text(parent, "version"))
                    .resolve(text(parent, "artifactId") + "-" + text(parent, "version") + ".pom");
            if (Files.exists(inherited)) {
                modules.addAll(needed(inherited));
            }
        }
        for (Element dependencies : children(project, "dependencies")) {
            for (Element one : children(dependencies, "dependency")) {
                boolean runs = List.of("", "compile", "runtime").contains(text(one, "scope"));
                if (runs && !text(one, "optional").equals("true")) {
                    String of = text(one, "groupId").replace("${project.groupId}", group);
                    modules.add(of + ":" + text(one, "artifactId"));
                }
            }
        }
        return modules;
    }

    @Test
    void theListNamesEveryLibraryThatTheBuildResolvedAndNoOther() throws IOException {
        Map<String, Path> jars = jars();
        Map<String, String> runtime = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>(needed(Path.of("pom.xml")));
        assertThat(open).contains("org.apache.pdfbox:pdfbox");
        while (!open.isEmpty()) {
            String module = open.pop();
            Path jar = resolved(jars, module);
            if (jar != null && !runtime.containsKey(module)) {
                runtime.put(module, jar.getParent().getFileName().toString());
                open.addAll(needed(Path.of(jar.toString().replaceAll("\\.jar$", ".pom"))));
            }
        }
        Map<String, String> list = new LinkedHashMap<>();
        listed().forEach((module, row) -> list.put(module, row.version()));
        assertThat(list).containsExactlyInAnyOrderEntriesOf(runtime);
    }

    @Test
    void everyLicenceHasItsTextInTheProgram() throws IOException {
        Map<String, String> texts = Map.of(
                "com.twelvemonkeys",
                "twelvemonkeys",
                "org.locationtech",
                "jts",
                "net.e175",
                "solarpositioning",
                "org.webjars.npm",
                "codemirror");
        Map<String, String> marks = Map.of(
                "BSD-3-Clause", "Neither the name of",
                "EPL-2.0 OR BSD-3-Clause", "Eclipse Distribution License - v 1.0",
                "MIT", "The above copyright notice and this permission notice",
                "Apache-2.0", "Version 2.0, January 2004");
        listed().forEach((module, row) -> {
            String file = texts.entrySet().stream()
                    .filter(text -> module.startsWith(text.getKey()))
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElse("Apache-2.0");
            assertThat(HelpTopics.text("licences")).contains("META-INF/licenses/" + file + ".txt");
            assertThat(licence(file)).as(module).contains(marks.get(row.licence()));
        });
        assertThat(licence("Apache-2.0")).isEqualTo(Files.readString(Path.of("LICENSE")));
    }

    /** It holds more than its own licence: fonts, glyph lists and character maps come with it. */
    @Test
    void theTextOfPdfboxIsThatOfItsJar() throws IOException {
        String location =
                Loader.class.getProtectionDomain().getCodeSource().getLocation().toString();
        try (InputStream in = new URL("jar:" + location + "!/META-INF/LICENSE").openStream()) {
            assertThat(licence("pdfbox")).isEqualTo(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    private static String licence(String name) {
        try (InputStream in = LicencesTest.class.getResourceAsStream("/META-INF/licenses/" + name + ".txt")) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
