package org.barreltally;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.GeneralCodingRules;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Holds the arrows between packages: who may know whom. */
@AnalyzeClasses(packages = "org.barreltally", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String ROOT = "org.barreltally.";

  @ArchTest
  static final ArchRule capabilities_know_only_those_below_them =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("refusal")
          .definedBy(ROOT + "refusal..")
          .layer("books")
          .definedBy(ROOT + "books..")
          .layer("measure")
          .definedBy(ROOT + "measure..")
          .layer("people")
          .definedBy(ROOT + "people..")
          .layer("web")
          .definedBy(ROOT + "web..")
          .layer("settings")
          .definedBy(ROOT + "settings..")
          .layer("ledger")
          .definedBy(ROOT + "ledger..")
          .layer("lots")
          .definedBy(ROOT + "lots..")
          .layer("containers")
          .definedBy(ROOT + "containers..")
          .layer("barrels")
          .definedBy(ROOT + "barrels..")
          .layer("canning")
          .definedBy(ROOT + "canning..")
          .layer("stock")
          .definedBy(ROOT + "stock..")
          .layer("pricing")
          .definedBy(ROOT + "pricing..")
          .layer("supplies")
          .definedBy(ROOT + "supplies..")
          .layer("bulk")
          .definedBy(ROOT + "bulk..")
          .layer("watch")
          .definedBy(ROOT + "watch..")
          .layer("netcontents")
          .definedBy(ROOT + "netcontents..")
          .layer("documents")
          .definedBy(ROOT + "documents..")
          .layer("sugarbush")
          .definedBy(ROOT + "sugarbush..")
          .layer("shows")
          .definedBy(ROOT + "shows..")
          .layer("sales")
          .definedBy(ROOT + "sales..")
          .layer("gifts")
          .definedBy(ROOT + "gifts..")
          .layer("table")
          .definedBy(ROOT + "table..")
          .layer("shares")
          .definedBy(ROOT + "shares..")
          .layer("shops")
          .definedBy(ROOT + "shops..")
          .layer("reconciliation")
          .definedBy(ROOT + "reconciliation..")
          .layer("cost")
          .definedBy(ROOT + "cost..")
          .layer("recall")
          .definedBy(ROOT + "recall..")
          .layer("closing")
          .definedBy(ROOT + "closing..")
          .layer("errands")
          .definedBy(ROOT + "errands..")
          .layer("keeping")
          .definedBy(ROOT + "keeping..")
          .layer("start")
          .definedBy(ROOT + "start..")
          .whereLayer("refusal")
          .mayNotAccessAnyLayer()
          .whereLayer("books")
          .mayNotAccessAnyLayer()
          .whereLayer("measure")
          .mayOnlyAccessLayers("refusal")
          .whereLayer("people")
          .mayOnlyAccessLayers("refusal", "books", "web")
          .whereLayer("web")
          .mayOnlyAccessLayers("refusal", "books", "measure", "pricing", "people")
          .whereLayer("errands")
          .mayOnlyAccessLayers("refusal", "books", "people", "web")
          .whereLayer("settings")
          .mayOnlyAccessLayers("refusal", "books", "measure", "ledger", "web")
          .whereLayer("ledger")
          .mayOnlyAccessLayers("refusal", "measure", "web")
          .whereLayer("lots")
          .mayOnlyAccessLayers("refusal", "measure", "settings", "ledger", "web")
          .whereLayer("containers")
          .mayOnlyAccessLayers("refusal", "books", "measure", "web")
          .whereLayer("barrels")
          .mayOnlyAccessLayers("refusal", "measure", "settings", "ledger", "lots", "web")
          .whereLayer("canning")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "lots", "containers", "barrels", "web")
          .whereLayer("stock")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "barrels",
              "errands",
              "web")
          .whereLayer("pricing")
          .mayOnlyAccessLayers(
              "refusal", "books", "measure", "settings", "ledger", "containers", "web")
          .whereLayer("supplies")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "containers", "canning", "web")
          .whereLayer("bulk")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "lots", "barrels", "pricing", "web")
          .whereLayer("watch")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "lots", "barrels", "supplies", "web")
          .whereLayer("netcontents")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "lots", "containers", "canning", "web")
          .whereLayer("documents")
          .mayOnlyBeAccessedByLayers("start")
          .whereLayer("sugarbush")
          .mayOnlyAccessLayers(
              "refusal", "measure", "settings", "ledger", "containers", "pricing", "web")
          .whereLayer("shows")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "stock",
              "pricing",
              "sales",
              "web")
          .whereLayer("sales")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "stock",
              "pricing",
              "web")
          .whereLayer("gifts")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "stock",
              "pricing",
              "shows",
              "errands",
              "web")
          .whereLayer("table")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "people",
              "containers",
              "stock",
              "pricing",
              "sales",
              "shows",
              "gifts",
              "web")
          .whereLayer("shares")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "stock",
              "pricing",
              "sugarbush",
              "web")
          .whereLayer("shops")
          .mayOnlyAccessLayers(
              "refusal",
              "measure",
              "settings",
              "ledger",
              "lots",
              "containers",
              "stock",
              "pricing",
              "web")
          .whereLayer("reconciliation")
          .mayOnlyBeAccessedByLayers("documents", "start")
          .whereLayer("cost")
          .mayOnlyBeAccessedByLayers("documents", "start")
          .whereLayer("recall")
          .mayOnlyAccessLayers("refusal", "measure", "ledger", "lots", "barrels", "web")
          .whereLayer("closing")
          .mayOnlyAccessLayers("refusal", "measure", "ledger", "pricing", "web")
          .whereLayer("keeping")
          .mayOnlyBeAccessedByLayers("web", "documents", "start")
          .whereLayer("start")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule only_documents_draws =
      noClasses()
          .that()
          .resideOutsideOfPackage(ROOT + "documents..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.lowagie..", "org.librepdf..", "uk.org.okapibarcode..")
          .as("the libraries for PDF and codes are used in documents alone");

  @ArchTest
  static final ArchRule domains_know_no_web =
      noClasses()
          .that(areInDomainsOfCapabilities())
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(ROOT + "web..", "jakarta.ws.rs..", "io.vertx..")
          .as("only rest and pages packages know the web");

  @ArchTest
  static final ArchRule internals_stay_inside =
      noClasses()
          .should(knowInternalsOfOthers())
          .as("what lies in an internal package is known only inside its capability");

  @ArchTest
  static final ArchRule no_cycles_inside_the_domain =
      slices()
          .matching(
              ROOT
                  + "(settings|ledger|lots|barrels|canning|stock|supplies|bulk|watch|netcontents|sugarbush"
                  + "|sales|shows|table|gifts|shares|shops|reconciliation|cost|recall|closing)..")
          .should()
          .beFreeOfCycles();

  @ArchTest
  static final ArchRule resources_live_in_rest_or_pages =
      noClasses()
          .that()
          .areAnnotatedWith(Path.class)
          .should()
          .resideOutsideOfPackages("..rest..", "..pages..", ROOT + "web.access..")
          .as("addresses are served from rest and pages packages");

  @ArchTest
  static final ArchRule no_clock_but_the_injected_one =
      noClasses()
          .that()
          .resideOutsideOfPackage(ROOT + "start..")
          .should()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(LocalDate.class, "now")
          .orShould()
          .callMethod(Clock.class, "systemUTC")
          .orShould()
          .callMethod(Clock.class, "systemDefaultZone")
          .orShould()
          .callMethod(System.class, "currentTimeMillis");

  @ArchTest
  static final ArchRule no_fields_injected =
      GeneralCodingRules.NO_CLASSES_SHOULD_USE_FIELD_INJECTION;

  @ArchTest
  static final ArchRule no_log_but_the_one =
      GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;

  private static DescribedPredicate<JavaClass> areInDomainsOfCapabilities() {
    return new DescribedPredicate<>("are outside rest, pages, web, start and people") {
      @Override
      public boolean test(JavaClass type) {
        String name = type.getPackageName();
        return !name.contains(".rest")
            && !name.contains(".pages")
            && !name.startsWith(ROOT + "web")
            && !name.startsWith(ROOT + "start")
            && !name.startsWith(ROOT + "people");
      }
    };
  }

  private static ArchCondition<JavaClass> knowInternalsOfOthers() {
    return new ArchCondition<>("know the internals of another capability") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        type.getDirectDependenciesFromSelf().stream()
            .filter(d -> d.getTargetClass().getPackageName().contains(".internal"))
            .filter(d -> d.getTargetClass().getPackageName().startsWith(ROOT))
            .filter(
                d ->
                    !capability(type.getPackageName())
                        .equals(capability(d.getTargetClass().getPackageName())))
            .forEach(d -> events.add(SimpleConditionEvent.satisfied(d, d.getDescription())));
      }
    };
  }

  private static String capability(String packageName) {
    String rest = packageName.substring(Math.min(packageName.length(), ROOT.length()));
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }
}
