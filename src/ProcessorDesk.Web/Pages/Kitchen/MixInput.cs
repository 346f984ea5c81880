namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is weighed into the mixer besides the lean, as it is typed.</summary>
public sealed class MixInput
{
    public string Fat { get; set; } = "";

    /// <summary>The lot of the added fat; empty where none is noted.</summary>
    public string FatLot { get; set; } = "";

    /// <summary>The lot of the casings; empty where none is noted.</summary>
    public string CasingLot { get; set; } = "";

    /// <summary>The form proposed its lots before: what is empty since is meant so.</summary>
    public bool LotsProposed { get; set; }

    /// <summary>One for each line of the formula, in its order.</summary>
    public List<Line> Lines { get; set; } = [];

    /// <summary>All that holds no cure and is not typed went in as the formula asks.</summary>
    public bool AsAsked { get; set; }

    /// <summary>Nothing goes in of those owners whose meat is still wanted.</summary>
    public bool WithoutThem { get; set; }

    /// <summary>Initials of the hand that weighed the cure again.</summary>
    public string AgainBy { get; set; } = "";

    public string LowCureBecause { get; set; } = "";

    public string AlreadyInBecause { get; set; } = "";

    public sealed class Line
    {
        public int Position { get; set; }

        public string Weighed { get; set; } = "";

        /// <summary>The second weighing, of a cure.</summary>
        public string Again { get; set; } = "";

        /// <summary>The lot's id; empty where none is noted.</summary>
        public string Lot { get; set; } = "";
    }
}
