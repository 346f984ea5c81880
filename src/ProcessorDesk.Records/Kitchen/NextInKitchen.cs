namespace ProcessorDesk.Records;

/// <summary>What is to be done next with a batch; read from its facts and never stored.</summary>
public enum NextInKitchen
{
    Held,
    Draw,
    Mix,
    Rest,
    Stuff,
    Heat,
    Cook,
    Chill,
    Weigh,
    Release,
}
