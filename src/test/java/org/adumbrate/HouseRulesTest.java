package org.adumbrate;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Holds the arrows between the rooms of the house. A package named here in vain fails the test. */
@AnalyzeClasses(packages = "org.adumbrate", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseRulesTest {
    @ArchTest
    static void arrowsAreThoseOfTheTable(JavaClasses classes) {
        assertThat(HouseArrows.real(classes))
                .as("src/test/resources/org/adumbrate/house-arrows.txt states each arrow with its reason, and no other")
                .containsExactlyInAnyOrderElementsOf(
                        HouseArrows.stated().reasons().keySet());
        assertThat(HouseArrows.stated().reasons().values()).noneMatch(String::isBlank);
    }

    @Test
    void theGuideShowsTheArrowsOfTheTable() throws IOException {
        assertThat(Files.readString(Path.of("DEVELOPERS.md")))
                .as("renew the diagram in DEVELOPERS.md under 'The rooms'")
                .contains(HouseArrows.stated().diagram());
    }

    @ArchTest
    static final ArchRule noRings =
            slices().matching("org.adumbrate.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule theReaderOfPdfIsAskedByTheFrontDoorAlone = classes()
            .that()
            .resideInAPackage("org.adumbrate.linework.pdf..")
            .should()
            .onlyHaveDependentClassesThat()
            .resideInAnyPackage("org.adumbrate.linework.pdf..", "org.adumbrate.linework.read..");

    @ArchTest
    static final ArchRule theReaderOfSvgIsAskedForLinesAndForOutlinesAlone = classes()
            .that()
            .resideInAPackage("org.adumbrate.linework.svg..")
            .should()
            .onlyHaveDependentClassesThat()
            .resideInAnyPackage(
                    "org.adumbrate.linework.svg..", "org.adumbrate.linework.read..", "org.adumbrate.figure.outline..");

    @ArchTest
    static final ArchRule whatReadersShareIsForReadersAlone = classes()
            .that()
            .resideInAPackage("org.adumbrate.linework.page..")
            .should()
            .onlyHaveDependentClassesThat()
            .resideInAnyPackage(
                    "org.adumbrate.linework.page..",
                    "org.adumbrate.linework.pdf..",
                    "org.adumbrate.linework.svg..",
                    "org.adumbrate.linework.read..");

    @ArchTest
    static final ArchRule imageLibrariesStayInTheCodecs = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "org.adumbrate.raster.decode.library..",
                    "org.adumbrate.raster.decode.jpeg..",
                    "org.adumbrate.raster.decode.tiff..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.imageio..", "com.twelvemonkeys..", "org.apache.commons.imaging..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule thePdfLibraryStaysInReadersAndWriters = noClasses()
            .that()
            .resideOutsideOfPackages("org.adumbrate.linework.pdf..", "org.adumbrate.drawing..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.pdfbox..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theParserOfXmlStaysInTheReaderOfSvg = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.linework.svg..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.xml.parsers..", "org.w3c.dom..", "org.xml.sax..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theParserOfCssStaysInItsRoom = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.linework.svg.css..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.htmlunit..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theCommandLineStaysInCli = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule polygonsStayInGeometryAndItsNearNeighbours = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "org.adumbrate.geometry..", "org.adumbrate.linework.profile..", "org.adumbrate.linework.region..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.locationtech.jts..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule solarPositionsStayInPerspective = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.perspective..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("net.e175..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule yamlStaysInTheSheetFile = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.sheetfile..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theParserOfJsonStaysInItsRoom = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.json..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fasterxml.jackson..")
            .because("third parties stay in their room");

    @ArchTest
    static final ArchRule theWebServerStaysBehindItsDoor = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.proof.http..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.sun.net.httpserver..")
            .because("whoever is not let in must not be answered");

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that()
            .resideOutsideOfPackage("org.adumbrate.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");
}
