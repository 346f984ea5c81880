namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>The shop's states in words for somebody who never stood in it.</summary>
public static class OwnersWords
{
    /// <summary>Where everything is, in one sentence: "Your white-tail deer hangs in the cooler."</summary>
    public static string Where(OwnersJob job)
    {
        var (who, many) = OwnersAnimal.Together(job.Animals);
        string Say(string one, string several) => $"{who} {(many ? several : one)}.";
        var someLeft = job.Boxes.Any(box => box.TakenAt is not null);
        return job.Facts.Stage switch
        {
            JobStage.DetailsMissing => Say("is here; the order is still to be settled", "are here; the order is still to be settled"),
            JobStage.InCooler when job.Animals.Any(animal => animal.HungAt is not null) => Say("hangs in our cooler", "hang in our cooler"),
            JobStage.InCooler => Say("is here and waits to be cut", "are here and wait to be cut"),
            JobStage.OnTable => Say("is on the cutting table", "are on the cutting table"),
            JobStage.TrimWeighed => Say("is cut; next we divide the trim as you asked", "are cut; next we divide the trim as you asked"),
            JobStage.SplitAgreed => Say("is in the kitchen", "are in the kitchen"),
            JobStage.Made => Say("is made up and goes into boxes", "are made up and go into boxes"),
            JobStage.Boxed when someLeft => Say("is boxed; part of it is with you, the rest is ready", "are boxed; part of it is with you, the rest is ready"),
            JobStage.Boxed => Say("is ready for you to pick up", "are ready for you to pick up"),
            JobStage.HandedOver => Say("went home with you", "went home with you"),
        };
    }

    /// <summary>What it waits for and what the owner can do.</summary>
    public static (string Waits, string Next) Hold(HoldReason reason) => reason switch
    {
        HoldReason.DiseaseTest => ("It waits for the disease test.", "Nothing of it is mixed or handed over before the result. The shop will call. Not tested is not the same as not detected."),
        HoldReason.DiseaseDetected => ("The disease test found something.", "Please do not wait for this page: the shop will call you and say what happens next."),
        HoldReason.MissingTag => ("The official tag is missing.", "Bring it or call the shop with its number. Until then the animal waits."),
        HoldReason.Dispute => ("Something has to be settled with you first.", "Please call the shop."),
        HoldReason.TooWarm => ("It came in warmer than it should.", "The shop is looking at it and will call."),
        HoldReason.CoolerFailed => ("A cooler failed while it was in there.", "The shop is looking at it and will call."),
        HoldReason.WrongMeatIn => ("A mix with your meat has to be looked at.", "It stands still until that is done. The shop will call."),
        HoldReason.RecordIncomplete => ("The record of a batch with your meat is not complete.", "It is not handed out before it is. The shop will call if that takes long."),
        HoldReason.Other => ("The shop has to settle something first.", "It will call you."),
    };

    public static string Test(DiseaseTest test) => test switch
    {
        DiseaseTest.NotRequired => "Not required where it came from; it was not tested",
        DiseaseTest.NotSampled => "Not tested",
        DiseaseTest.HunterWillCall => "You call us with the result",
        DiseaseTest.Pending => "Sample taken, waiting for the result",
        DiseaseTest.NotDetected => "Not detected",
        DiseaseTest.Detected => "Detected",
    };

    public static string ArrivedAs(ArrivalState state) => state switch
    {
        ArrivalState.Whole => "whole",
        ArrivalState.FieldDressed => "field-dressed",
        ArrivalState.Skinned => "skinned",
        ArrivalState.Quarters => "in quarters",
        ArrivalState.FreshBoned => "boned, fresh",
        ArrivalState.FrozenBoned => "boned, frozen",
        ArrivalState.Unknown => "as found",
    };

    /// <summary>"waits for its turn", "made on Fri 27 Nov, in our freezer".</summary>
    public static string State(OwnersProduct product, IReadOnlyList<OwnersBox> boxes, Func<DateTime, string> date)
    {
        var on = product.Since is { } at ? " on " + date(at) : "";
        return product.State switch
        {
            KitchenState.Asked => "Divided once the meat is weighed",
            KitchenState.Waiting or KitchenState.Planned or KitchenState.Mixed when product.Held is not null => "Waits: see above",
            KitchenState.Waiting when product.Green.IsZero => "There was no trim left for it",
            KitchenState.Waiting => "Waits for its turn in the kitchen",
            KitchenState.Planned => "Next in the kitchen",
            KitchenState.Mixed => $"Mixed{on}; rests, cooks or chills now",
            KitchenState.Made => $"Made{on}{Kept(product, boxes)}",
            KitchenState.ThrownOut => $"Had to be thrown out{on}; the shop talks to you about it",
        };
    }

    private static string Kept(OwnersProduct product, IReadOnlyList<OwnersBox> boxes)
    {
        var own = boxes.Where(box => box.Contents.Any(content => content.Name == product.Name)).ToList();
        var taken = own.Count(box => box.TakenAt is not null);
        return own.Count == 0 ? "; to be boxed"
            : taken == own.Count ? "; with you"
            : taken > 0 ? "; part with you, part in our freezer"
            : "; in our freezer";
    }
}
