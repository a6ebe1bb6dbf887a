package org.barsheet;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.ArrayList;
import java.util.List;

/** The floors of the house: a package uses only packages below it, and nothing goes in a circle. */
@AnalyzeClasses(packages = "org.barsheet", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** From the ground up; rooms on one floor know nothing of each other. */
  private static final List<List<String>> FLOORS =
      List.of(
          List.of("input", "text", "pixels"),
          List.of("clock"),
          List.of("score", "clips", "recording"),
          List.of("pulse", "notation"),
          List.of("motif", "follow"),
          List.of("suggestions", "plan", "revision"),
          List.of("cues"),
          List.of("align"),
          List.of("timing"),
          List.of("artwork"),
          List.of("exposure"),
          List.of("received", "shooting", "calls", "changes"),
          List.of("findings", "adoption", "photographs", "ticks"),
          List.of("film"),
          List.of("frames"),
          List.of("sound", "paper"),
          List.of("workbook", "handoff", "review", "movie"),
          List.of("production"),
          List.of("desk"),
          List.of("cli"));

  @ArchTest
  static final ArchRule every_floor_stands_on_the_floors_below_it =
      floors().because("data flows one way: score and plan, timing, exposure, print-outs");

  private static LayeredArchitecture floors() {
    LayeredArchitecture house = layeredArchitecture().consideringOnlyDependenciesInLayers();
    for (List<String> floor : FLOORS) {
      for (String room : floor) {
        house = house.layer(room).definedBy("org.barsheet." + room + "..");
      }
    }
    List<String> below = new ArrayList<>();
    for (List<String> floor : FLOORS) {
      for (String room : floor) {
        house =
            below.isEmpty()
                ? house.whereLayer(room).mayNotAccessAnyLayer()
                : house.whereLayer(room).mayOnlyAccessLayers(below.toArray(new String[0]));
      }
      below.addAll(floor);
    }
    return house.ensureAllClassesAreContainedInArchitecture();
  }

  @ArchTest
  static final ArchRule no_package_depends_on_itself_through_others =
      slices().matching("org.barsheet.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule commands_do_not_see_the_print_outs =
      noClasses()
          .that(resideInAPackage("org.barsheet.cli.."))
          .should()
          .dependOnClassesThat(
              resideInAPackage("org.barsheet.workbook..")
                  .or(resideInAPackage("org.barsheet.handoff.."))
                  .or(resideInAPackage("org.barsheet.review.."))
                  .or(resideInAPackage("org.barsheet.sound..")))
          .because("commands parse and print; production runs the road");

  @ArchTest
  static final ArchRule only_the_command_line_ends_the_program =
      noClasses()
          .that(DescribedPredicate.not(resideInAPackage("org.barsheet.cli..")))
          .should()
          .callMethod(System.class, "exit", int.class)
          .because("exits scattered over the code lose a person's work");
}
