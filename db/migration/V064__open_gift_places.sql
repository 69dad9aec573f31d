-- Where the jars of gift orders stand between shelf and post. What came back is own stock that cannot be promised until
-- somebody has looked at it, so that place is out, not home.

INSERT INTO places (code, name, kind, below_zero) VALUES
  ('gift-shelf', 'Picked for gift orders', 'home', false),
  ('gift-returns', 'Returned gift parcels, not yet inspected', 'out', false);
