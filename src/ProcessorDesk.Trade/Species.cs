namespace ProcessorDesk.Trade;

/// <summary>The kinds of animal a shop takes in. The numbers are stored; they never change.</summary>
public enum Species
{
    WhiteTailDeer = 1,
    MuleDeer = 2,
    Elk = 3,
    Moose = 4,
    Pronghorn = 5,
    Bear = 6,
    WildBoar = 7,
    Hog = 8,
    Beef = 9,
    Bison = 10,
    Lamb = 11,
    Goat = 12,
}
