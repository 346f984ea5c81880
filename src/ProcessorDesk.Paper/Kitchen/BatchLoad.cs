namespace ProcessorDesk.Paper;

/// <summary>One filling of the mixer. "Then" is what is in the mixer after a line, counted meat, added fat, ingredients, cure; the last is the green weight.</summary>
/// <param name="Meat">By owner and lug.</param>
/// <param name="AddedFat">Bought in; empty where none is.</param>
/// <param name="MeatBlock">Lean and added fat as planned: "17.86 lb".</param>
/// <param name="Ingredients">All that holds no cure, in the order of the formula.</param>
/// <param name="Cure">Everything that holds nitrite or nitrate; null where the product is not cured.</param>
/// <param name="Green">All together as planned: "18.57 lb".</param>
public sealed record BatchLoad(
    IReadOnlyList<BatchMeat> Meat,
    IReadOnlyList<BatchFat> AddedFat,
    string MeatBlock,
    IReadOnlyList<BatchIngredient> Ingredients,
    BatchCure? Cure,
    string Green);

/// <summary>An owner's meat, from one lug where it is known: "Rosa Lindqvist", "1042", "14", planned "12.50 lb", then "12.50 lb". Without a lug there is a line to write it on.</summary>
public sealed record BatchMeat(string Owner, string JobNumber, string Lug, string Planned, string Then);

/// <summary>Added fat: "Pork trim, 72 % lean", planned "5.36 lb", then "17.86 lb".</summary>
public sealed record BatchFat(string Name, string Planned, string Then);

/// <summary>An ingredient on the small scale's division and for a hand without that scale: "Salt", "141.7 g", "5.00 oz", then "18.17 lb".</summary>
public sealed record BatchIngredient(string Name, string Grams, string PoundsAndOunces, string Then);

/// <summary>The cure of one load.</summary>
/// <param name="Lines">Each thing that holds nitrite or nitrate; at least one.</param>
/// <param name="Figures">What they make together; at least one.</param>
public sealed record BatchCure(IReadOnlyList<BatchCureLine> Lines, IReadOnlyList<BatchCureFigure> Figures);

/// <summary>A cure to weigh in.</summary>
/// <param name="Name">"Pink curing salt".</param>
/// <param name="Strength">As its maker states: "6.25 % nitrite".</param>
/// <param name="Grams">"20.2 g", rounded down.</param>
/// <param name="PoundsAndOunces">"0.71 oz", rounded down.</param>
/// <param name="Most">The most that meets the limit on the planned meat block: "20.2 g".</param>
/// <param name="Then">In the mixer then: "18.57 lb".</param>
public sealed record BatchCureLine(string Name, string Strength, string Grams, string PoundsAndOunces, string Most, string Then);

/// <summary>Nitrite or nitrate on the meat block: "nitrite", "155.87 ppm", the limit "156.25 ppm (1/4 oz per 100 lb)", and where it is published.</summary>
public sealed record BatchCureFigure(string Agent, string Ppm, string Limit, string Source);
