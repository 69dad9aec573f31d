package org.barreltally;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Singleton;
import java.util.Collection;
import java.util.Map;
import java.util.Set;

/**
 * What lives as long as the program remembers nothing of a book, but for what {@code OfEachBook}
 * keeps apart: one program may keep the books of several sugarhouses.
 */
@AnalyzeClasses(packages = "org.barreltally", importOptions = ImportOption.DoNotIncludeTests.class)
class MemoryOfBooksTest {

  /** What is of the program or of a network, and of no book. */
  private static final Set<String> OF_NO_BOOK =
      Set.of(
          "Crowd.inside", // requests under way
          "CsvAnswers.known", // methods of the program
          "Visitors.asked", // questions from a network
          "Passwords.failures", // wrong passwords from a network
          "SlowHashing.processors",
          "ErrandWorker.waiting", // with the book of each
          "Books.workedFor"); // the book itself

  @ArchTest
  static final ArchRule nothing_of_a_book_is_remembered_for_all =
      noFields()
          .that(liveAsLongAsTheProgram())
          .should()
          .haveRawType(canHoldWhatWasRead())
          .as("no memory that is shared by several books");

  private static DescribedPredicate<JavaField> liveAsLongAsTheProgram() {
    return DescribedPredicate.describe(
        "belong to what lives as long as the program",
        field ->
            (field.getOwner().isAnnotatedWith(ApplicationScoped.class)
                    || field.getOwner().isAnnotatedWith(Singleton.class))
                && !(field.getModifiers().contains(JavaModifier.STATIC) && isPlain(field))
                && !OF_NO_BOOK.contains(field.getOwner().getSimpleName() + "." + field.getName()));
  }

  /** A table of constants, as far as a type can tell. */
  private static boolean isPlain(JavaField field) {
    return Set.of(Map.class.getName(), Set.class.getName()).contains(field.getRawType().getName());
  }

  private static DescribedPredicate<JavaClass> canHoldWhatWasRead() {
    return DescribedPredicate.describe(
        "can hold what was read",
        type ->
            type.isAssignableTo(Map.class)
                || type.isAssignableTo(ThreadLocal.class)
                || type.isAssignableTo("com.github.benmanes.caffeine.cache.Cache")
                || type.getPackageName().equals("java.util.concurrent.atomic")
                || type.getSimpleName().equals("Semaphore")
                || type.getSimpleName().equals("Remembered")
                || type.getSimpleName().equals("Attempts")
                || type.isAssignableTo(Collection.class) && !type.getSimpleName().equals("List"));
  }
}
