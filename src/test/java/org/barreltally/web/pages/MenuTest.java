package org.barreltally.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.arc.All;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
class MenuTest {

  @Inject @All List<MenuEntry> entries;

  @Test
  void the_menu_is_made_whoever_opens_the_first_page_after_a_start() {
    List<Menu.Link> links =
        new Menu(entries).parts().stream().flatMap(part -> part.links().stream()).toList();
    assertEquals(entries.size(), links.size());
    Menu.Link people =
        links.stream().filter(link -> link.path().equals("/people")).findFirst().orElseThrow();
    assertTrue(people.isFor("owner"));
    assertFalse(people.isFor("bookkeeper"));
  }
}
