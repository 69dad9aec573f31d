-- Jars at some places are spoken for: picked for a gift order, or back from one and not looked at. They leave by the steps of
-- their order alone, and nothing is carried there by hand.
ALTER TABLE places ADD COLUMN set_aside boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN places.set_aside IS 'jars come and go here by the steps of gift orders alone';
UPDATE places SET set_aside = true WHERE code IN ('gift-shelf', 'gift-returns');
